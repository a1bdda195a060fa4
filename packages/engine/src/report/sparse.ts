import { inverse } from '../base/echelon.ts';

// Work that is worth spending on shorter words.
const MOST_TRIES = 200_000;

/**
 * The same equations with fewer terms each: a row is replaced by itself and a multiple of another where that has fewer nonzero
 * entries among the first `counted`. Rows span what they spanned before.
 */
export function sparser(rows: readonly (readonly number[])[], counted: number, p: number): number[][] {
  const result = rows.map((row) => [...row]);
  const weight = (row: readonly number[]): number => {
    let count = 0;
    for (let i = 0; i < counted; i++) if (row[i] !== 0) count++;
    return count;
  };
  const weights = result.map(weight);
  let tries = 0;
  for (let changed = true; changed;) {
    changed = false;
    for (let i = 0; i < result.length; i++)
      for (let j = 0; j < result.length; j++) {
        if (i === j || weights[i] < 2) continue;
        for (const times of multipliers(result[i], result[j], counted, p)) {
          if (++tries > MOST_TRIES) return result;
          const sum = result[i].map((value, k) => (value + times * result[j][k]) % p);
          const after = weight(sum);
          // A row without terms says nothing of the cards; `contradict` looks for those.
          if (after === 0 || after >= weights[i]) continue;
          result[i] = sum;
          weights[i] = after;
          changed = true;
          break;
        }
      }
  }
  return result;
}

function multipliers(row: readonly number[], by: readonly number[], counted: number, p: number): number[] {
  if (p === 2) return [1];
  const found = new Set<number>();
  for (let k = 0; k < counted; k++)
    if (row[k] !== 0 && by[k] !== 0) found.add((((p - row[k]) % p) * inverse(by[k], p)) % p);
  return [...found];
}

/** What is left where combinations of the rows have no terms any more: only constants. */
export function contradict(rows: readonly (readonly number[])[], counted: number, p: number): number[][] {
  const kept: { row: number[]; pivot: number }[] = [];
  const left: number[][] = [];
  for (const row of rows) {
    const rest = [...row];
    for (const { row: by, pivot } of kept) {
      const times = (p - rest[pivot]) % p;
      if (times !== 0) by.forEach((value, k) => (rest[k] = (rest[k] + times * value) % p));
    }
    const pivot = rest.findIndex((value, k) => k < counted && value !== 0);
    if (pivot < 0) {
      left.push(rest);
      continue;
    }
    const scale = inverse(rest[pivot], p);
    kept.push({ row: rest.map((value) => (value * scale) % p), pivot });
  }
  return left;
}
