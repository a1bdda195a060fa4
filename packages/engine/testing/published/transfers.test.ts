import { describe, expect, test } from 'vitest';
import { cards, followedBy, onlyOrder } from './outcomes.ts';

// C. Mulcahy, Low Down Triple Dealing, Card Colm (MAA), October 2004; Mathematical Card Magic (2013), ch. 1.
describe('count k of n to the table, drop the rest on top, with n at most 2k', () => {
  const moved = (n: number, k: number): number[] =>
    onlyOrder(n, `Count ${k} cards to the table and drop the rest on top.`);
  const sizes = cards(14).flatMap((n) => cards(n).map((k) => [n, k] as const));
  test('three times bring the bottom k cards to the top, reversed', () => {
    for (const [n, k] of sizes.filter(([m, count]) => m <= 2 * count)) {
      const thrice = followedBy(followedBy(moved(n, k), moved(n, k)), moved(n, k));
      expect(thrice.slice(0, k)).toEqual(cards(k).map((i) => n + 1 - i));
    }
  });
  test('four times restore the packet', () => {
    for (const [n, k] of sizes.filter(([m, count]) => m <= 2 * count)) {
      const twice = followedBy(moved(n, k), moved(n, k));
      expect(followedBy(twice, twice)).toEqual(cards(n));
    }
  });
  test('with fewer than half the bottom card need not come up', () => {
    const thrice = followedBy(followedBy(moved(7, 3), moved(7, 3)), moved(7, 3));
    expect(thrice[0]).not.toBe(7);
  });
});

// W. W. Rouse Ball, Mathematical Recreations and Essays, 4th ed. 1905, chapter 1, Third Example.
test('reverse the top m, move y from the bottom to the top: card x comes to y + m - x + 1', () => {
  for (const n of [8, 12, 19])
    for (let m = 1; m < n; m++)
      for (let y = 0; y < n - m; y++) {
        const after = onlyOrder(
          n,
          `Deal ${m} cards to the table.`,
          'Put the table on the packet.',
          `Transfer ${y} cards from bottom to top.`,
        );
        for (let x = 1; x <= m; x++) expect(after.indexOf(x) + 1).toBe(y + m - x + 1);
      }
});
