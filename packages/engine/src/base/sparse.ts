import { inverse } from './echelon.ts';

// Work that is worth spending on shorter words.
const MOST_TRIES = 200_000;

/**
 * The same equations with as few terms as is easily found: the rows as they are, reduced from the left and reduced from the right,
 * each with short combinations put in place of long rows; the shortest of the three. The first `counted` entries are terms.
 */
export function sparser(rows: readonly (readonly number[])[], counted: number, p: number): number[][] {
  const order = Array.from({ length: counted }, (_, i) => i);
  const ways = [rows, reduced(rows, order, p), reduced(rows, [...order].reverse(), p)];
  const all = ways.map((way) => shortened(way, counted, p));
  const terms = (way: number[][]): number => way.reduce((sum, row) => sum + weightOf(row, counted), 0);
  return all.reduce((best, way) => (terms(way) < terms(best) ? way : best));
}

function weightOf(row: readonly number[], counted: number): number {
  let count = 0;
  for (let i = 0; i < counted; i++) if (row[i] !== 0) count++;
  return count;
}

/** Every row has 1 in a column of its own, the first in this order that it can have, where the others have 0. */
function reduced(rows: readonly (readonly number[])[], order: readonly number[], p: number): number[][] {
  const kept: { row: number[]; pivot: number }[] = [];
  const constants: number[][] = [];
  for (const row of rows) {
    const rest = [...row];
    for (const { row: by, pivot } of kept) subtract(rest, by, rest[pivot], p);
    const pivot = order.find((k) => rest[k] !== 0);
    if (pivot === undefined) {
      constants.push(rest);
      continue;
    }
    const scale = inverse(rest[pivot], p);
    const made = rest.map((value) => (value * scale) % p);
    for (const { row: by } of kept) subtract(by, made, by[pivot], p);
    kept.push({ row: made, pivot });
  }
  return [...kept.map(({ row }) => row), ...constants];
}

function subtract(from: number[], row: readonly number[], times: number, p: number): void {
  if (times === 0) return;
  for (let k = 0; k < from.length; k++) from[k] = (from[k] + (p - times) * row[k]) % p;
}

/** A row is replaced by itself and a multiple of another where that has fewer terms. */
function shortened(rows: readonly (readonly number[])[], counted: number, p: number): number[][] {
  const result = rows.map((row) => [...row]);
  const weight = (row: readonly number[]): number => weightOf(row, counted);
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
  const order = Array.from({ length: counted }, (_, i) => i);
  return reduced(rows, order, p).filter((row) => weightOf(row, counted) === 0);
}
