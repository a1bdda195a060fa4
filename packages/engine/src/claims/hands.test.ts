import { expect, test } from 'vitest';
import { SORT, strength } from './hands.ts';

const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k);

/**
 * How many of the 2,598,960 hands of five from 52 are of each sort; common practice, no source. Ranks are listed once, and counted as
 * often as suits can be given to them.
 */
test('there are as many hands of each sort as everybody knows', () => {
  const found = new Array<number>(9).fill(0);
  const add = (ranks: readonly number[], suits: readonly number[] | undefined, times: number): void => {
    found[Math.floor(strength(ranks, suits) / SORT)] += times;
  };
  const list = (ranks: readonly number[], from: number): void => {
    if (ranks.length < 5) {
      for (let rank = from; rank <= 14; rank++) list([...ranks, rank], rank);
      return;
    }
    const kinds = [...new Set(ranks)];
    const copies = kinds.map((rank) => ranks.filter((one) => one === rank).length);
    if (copies.some((n) => n > 4)) return;
    const ways = copies.reduce((all, n) => all * choose(4, n), 1);
    const flushes = kinds.length === 5 ? 4 : 0;
    if (flushes > 0) add(ranks, [2, 2, 2, 2, 2], flushes);
    add(ranks, [0, 1, 2, 3, 0], ways - flushes);
  };
  list([], 2);
  expect(found).toEqual([1302540, 1098240, 123552, 54912, 10200, 5108, 3744, 624, 40]);
});

test('the higher cards tell, and the ace is low only in the lowest straight', () => {
  const better = (a: readonly number[], b: readonly number[]): boolean =>
    strength(a, undefined) > strength(b, undefined);
  expect(better([14, 14, 5, 4, 3], [13, 13, 12, 11, 9])).toBe(true);
  expect(better([9, 9, 4, 4, 3], [9, 9, 4, 4, 2])).toBe(true);
  expect(better([6, 5, 4, 3, 2], [14, 5, 4, 3, 2])).toBe(true);
  expect(better([14, 5, 4, 3, 2], [14, 14, 14, 3, 2])).toBe(true);
  expect(better([2, 14, 13, 12, 11], [13, 13, 2, 3, 4])).toBe(false);
  expect(better([7, 7, 7, 2, 3], [7, 7, 7, 3, 2])).toBe(false);
});
