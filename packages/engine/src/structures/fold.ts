import { echelonOver, type Echelon, type Vector } from '../base/echelon.ts';
import type { Found, SlotRow } from './found.ts';
import type { SlotVectors } from './slot-vectors.ts';
import { Ties } from './ties.ts';

/** A row as a vector over the slots and the constant. */
function rowVector({ weights, total }: SlotRow, slots: number, p: number): Vector {
  const dense = new Int32Array(slots + 1);
  for (const [slot, coef] of weights) dense[slot] = (dense[slot] + coef) % p;
  dense[slots] = (((p - total) % p) + p) % p;
  if (p !== 2) return dense;
  const packed = new Uint32Array((slots + 1 + 31) >>> 5);
  dense.forEach((value, i) => {
    if (value === 1) packed[i >>> 5] |= 1 << (i & 31);
  });
  return packed;
}

/** The strongest first, without those that follow from what was told before. */
export function folded(
  all: readonly Found[],
  { slots, p }: SlotVectors,
  isTrivial: (row: SlotRow) => boolean,
): Found[] {
  const ranked = all.map((found) => ({ ...found, rank: rankOf(found, slots, p) }));
  // What is said of one pile is plainer than what is said of two.
  const order = ranked
    .map((found, i) => ({ found, i }))
    .sort((a, b) => a.found.piles.length - b.found.piles.length || b.found.rank - a.found.rank || a.i - b.i);
  const told = echelonOver(p, slots + 1);
  const ties = new Ties(slots);
  for (const { rows } of all) addAll(told, rows.filter(isTrivial), slots, p);
  return order
    .filter(({ found }) => {
      const pairs = tiesIn(found);
      if (pairs?.every(([a, b, odd]) => ties.follows(a, b, odd)) === true) return false;
      pairs?.forEach(([a, b, odd]) => ties.tie(a, b, odd));
      return addAll(told, found.rows, slots, p) > 0;
    })
    .map(({ found }) => found);
}

/** The slots that a structure ties two by two; null for others. */
function tiesIn({ pattern, rows }: Found): (readonly [number, number, 0 | 1])[] | null {
  if (pattern.of !== 'pairs') return null;
  const odd = pattern.relation === 'opposite' ? 1 : 0;
  return rows.map(({ weights: [[a], [b]] }) => [a, b, odd] as const);
}

function rankOf(found: Found, slots: number, p: number): number {
  const pairs = tiesIn(found);
  if (pairs === null) return addAll(echelonOver(p, slots + 1), found.rows, slots, p);
  const ties = new Ties(slots);
  return pairs.filter(([a, b, odd]) => ties.tie(a, b, odd)).length;
}

/** How many of the rows were new. */
function addAll(basis: Echelon, rows: readonly SlotRow[], slots: number, p: number): number {
  let added = 0;
  for (const row of rows) if (basis.insert(rowVector(row, slots, p))) added++;
  return added;
}
