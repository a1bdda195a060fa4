import { describe, expect, test } from 'vitest';
import { cards, cycleOrder, followedBy, onlyOrder } from './outcomes.ts';
import { MILK_ORDERS, MONGE_OVER_ORDERS, MONGE_UNDER_ORDERS } from './values.ts';

const over = (n: number): number[] => onlyOrder(n, 'Monge-shuffle the packet.');
const under = (n: number): number[] => onlyOrder(n, 'Monge-shuffle the packet, the second beneath.');
const milk = (n: number): number[] => onlyOrder(n, 'Milk the packet.');

describe('times to restore 1 to 104 cards', () => {
  test.each([
    ['Monge, 2nd on top', over, MONGE_OVER_ORDERS],
    ['Monge, 2nd beneath', under, MONGE_UNDER_ORDERS],
    ['milk', milk, MILK_ORDERS],
  ] as const)('%s', (_name, mix, orders) => {
    expect(orders.map((_, i) => cycleOrder(mix(i + 1)))).toEqual(orders);
  });
  // W. W. Rouse Ball 1905; M. Kraitchik, Mathematical Recreations, p. 321.
  test.each([
    [32, 6],
    [52, 12],
    [13, 10],
    [50, 50],
    [64, 7],
  ])('Monge of %i cards: %i', (n, times) => {
    expect(cycleOrder(over(n))).toBe(times);
  });
});

// W. W. Rouse Ball, Mathematical Recreations and Essays, 4th ed. 1905, Shuffling a Pack.
describe('where Monge takes a card', () => {
  test('odd x to (2p + x + 1)/2, even x to (2p - x + 2)/2 of 2p cards', () => {
    for (let p = 1; p <= 52; p++)
      for (const x of cards(2 * p))
        expect(over(2 * p).indexOf(x) + 1).toBe(x % 2 === 1 ? (2 * p + x + 1) / 2 : (2 * p - x + 2) / 2);
  });
  test('6p + 4 cards: card 2p + 2 stays; 10p + 2 cards: 2p + 1 and 6p + 2 change places', () => {
    for (let p = 0; p <= 16; p++) expect(over(6 * p + 4)[2 * p + 1]).toBe(2 * p + 2);
    for (let p = 1; p <= 10; p++) {
      const after = over(10 * p + 2);
      expect([after[2 * p], after[6 * p + 1]]).toEqual([6 * p + 2, 2 * p + 1]);
    }
    expect(over(52)[17]).toBe(18);
    expect([over(52)[10], over(52)[31]]).toEqual([32, 11]);
  });
});

test('eight cards', () => {
  expect(over(8)).toEqual([8, 6, 4, 2, 1, 3, 5, 7]);
  expect(under(8)).toEqual([7, 5, 3, 1, 2, 4, 6, 8]);
  expect(milk(8)).toEqual([4, 5, 3, 6, 2, 7, 1, 8]);
});

// P. Levy, Sur quelques classes de permutations, Compositio Mathematica 8 (1951); by simulation.
test('milk undoes the Monge with the second beneath when the number is even', () => {
  for (let n = 2; n <= 52; n += 2) expect(followedBy(under(n), milk(n))).toEqual(cards(n));
});
