import { inverse } from './echelon.ts';

/**
 * A basis of all rows w with w . x = 0 for every vector x given, over the field of p elements: the equations that hold on all of
 * them. Vectors and rows are plain lists of `width` numbers below p.
 */
export function nullspace(vectors: readonly (readonly number[])[], width: number, p: number): number[][] {
  const rows: number[][] = [];
  const pivots: number[] = [];
  for (const vector of vectors) {
    const v = [...vector];
    rows.forEach((row, i) => subtract(v, row, v[pivots[i]], p));
    const pivot = v.findIndex((value) => value !== 0);
    if (pivot < 0) continue;
    const scale = inverse(v[pivot], p);
    for (let k = 0; k < width; k++) v[k] = (v[k] * scale) % p;
    rows.forEach((row) => subtract(row, v, row[pivot], p));
    rows.push(v);
    pivots.push(pivot);
  }
  const bound = new Set(pivots);
  const basis: number[][] = [];
  for (let free = 0; free < width; free++) {
    if (bound.has(free)) continue;
    const w = new Array<number>(width).fill(0);
    w[free] = 1;
    rows.forEach((row, i) => (w[pivots[i]] = (p - row[free]) % p));
    basis.push(w);
  }
  return basis;
}

function subtract(from: number[], row: readonly number[], times: number, p: number): void {
  if (times === 0) return;
  for (let k = 0; k < from.length; k++) from[k] = (from[k] + (p - times) * row[k]) % p;
}
