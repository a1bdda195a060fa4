import type { Cards } from './claim-look.ts';

/** Which of two hands of five is better, as a player at the table tells it; shares nothing with the engine's own judgement. */
export function beats(one: Cards, other: Cards): boolean {
  if (one.length !== 5 || other.length !== 5) return false;
  const [a, b] = [lookAt(one), lookAt(other)];
  for (const [i, value] of a.entries()) if (value !== b[i]) return value > b[i];
  return false;
}

const ORDER = '2 3 4 5 6 7 8 9 10 J Q K A'.split(' ');

/** The sort of hand, weakest 0, and then the ranks that settle a tie. */
function lookAt(hand: Cards): number[] {
  const ranks = hand.map(({ card }) => ORDER.indexOf(String(card.attributes.rank)));
  const copies = (rank: number): number => ranks.filter((other) => other === rank).length;
  const twins = ranks.reduce((sum, rank) => sum + copies(rank) - 1, 0) / 2;
  const sorted = [...ranks].sort((x, y) => copies(y) - copies(x) || y - x);
  const oneSuit = new Set(hand.map(({ card }) => card.attributes.suit)).size === 1;
  const steps = sorted.slice(1).every((rank, i) => sorted[i] - rank === 1);
  const wheel = twins === 0 && sorted.join() === '12,3,2,1,0';
  const straight = steps || wheel;
  const top = wheel ? [3] : sorted;
  if (straight && oneSuit) return [8, ...top];
  if (twins === 6) return [7, ...sorted];
  if (twins === 4) return [6, ...sorted];
  if (oneSuit) return [5, ...sorted];
  if (straight) return [4, ...top];
  return [twins, ...sorted];
}
