/**
 * How good a hand of five cards is, by the usual order: straight flush, four of a kind, full house, flush, straight, three of a kind, two
 * pairs, one pair, high card; among equals the higher cards tell. Common practice, no source.
 */
export const HAND = 5;
const ACE = 14;
/** More than any rank, so that ranks are digits. */
const BASE = ACE + 1;
/** What one sort of hand is worth more than the sort below it. */
export const SORT = BASE ** HAND;

/** Ranks from 2 to 14, the ace high; `SORT` times the sort of hand, and more for higher cards. Greater is better. `suits` undefined where no five cards of one suit are there. */
export function strength(ranks: readonly number[], suits: readonly number[] | undefined): number {
  const counts = new Map<number, number>();
  for (const rank of ranks) counts.set(rank, (counts.get(rank) ?? 0) + 1);
  // Most of a kind first, then by rank.
  const groups = [...counts].sort(([a, n], [b, m]) => m - n || b - a);
  const shape = groups.map(([, n]) => n).join('');
  const isFlush = suits !== undefined && suits.every((suit) => suit === suits[0]);
  const high = straightTo(groups.map(([rank]) => rank));
  const digits = (values: readonly number[]): number => values.reduce((sum, value) => sum * BASE + value, 0);
  const kickers = digits(groups.map(([rank]) => rank)) * BASE ** (HAND - groups.length);
  if (high > 0) return (isFlush ? 8 : 4) * SORT + high;
  return (isFlush ? Math.max(5, SHAPES.indexOf(shape)) : SHAPES.indexOf(shape)) * SORT + kickers;
}

/** Weakest first; 4, 5 and 8 are the straight, the flush and both. */
const SHAPES = ['11111', '2111', '221', '311', '', '', '32', '41'];

/** The highest card of a straight, 0 where it is none; the ace may be low. */
function straightTo(descending: readonly number[]): number {
  if (descending.length < HAND) return 0;
  if (descending[0] - descending[HAND - 1] === HAND - 1) return descending[0];
  return descending[0] === ACE && descending[1] === HAND ? HAND : 0;
}
