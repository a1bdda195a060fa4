import { plus, rational, times, toNumber, ZERO, type Rational } from '../../base/rational.ts';

/** Eulerian numbers: how many orders of n cards have exactly r rising sequences, for r = 1 to n. */
export function ordersByRisingSequences(n: number): bigint[] {
  let row: bigint[] = [1n];
  for (let m = 2; m <= n; m++)
    row = Array.from({ length: m }, (_, i) => {
      const r = i + 1;
      return BigInt(r) * (row[r - 1] ?? 0n) + BigInt(m - r + 1) * (row[r - 2] ?? 0n);
    });
  return row;
}

/** n over k; 0 where k exceeds n. */
function choose(n: bigint, k: number): bigint {
  if (n < BigInt(k)) return 0n;
  let result = 1n;
  for (let i = 0; i < k; i++) result = (result * (n - BigInt(i))) / BigInt(i + 1);
  return result;
}

/**
 * How far a packet of n cards is from well mixed after so many riffles: the total variation distance, exact. After k riffles an order
 * with r rising sequences has the chance C(2^k + n - r, n) / 2^(kn) (D. Bayer and P. Diaconis, Trailing the dovetail shuffle to its lair,
 * Annals of Applied Probability 2, 1992).
 */
export function riffleDistance(cards: number, riffles: number): Rational {
  const counts = ordersByRisingSequences(cards);
  const packets = 2n ** BigInt(riffles);
  const all = packets ** BigInt(cards);
  const orders = counts.reduce((sum, count) => sum + count, 0n);
  let sum = ZERO;
  counts.forEach((count, i) => {
    const likely = choose(packets + BigInt(cards - (i + 1)), cards);
    // The difference of likely / all and 1 / orders, without its sign, once for each such order.
    const off = likely * orders - all;
    sum = plus(sum, rational(count * (off < 0n ? -off : off), all * orders));
  });
  return times(sum, rational(1n, 2n));
}

/** The same as a decimal number. */
export function riffleDistanceNumber(cards: number, riffles: number): number {
  return toNumber(riffleDistance(cards, riffles));
}
