import { describe, expect, test } from 'vitest';
import { cards, onlyOrder } from './outcomes.ts';
import { gcd, orders } from './structures.ts';

/** Old places from the top after a deal into piles and a gathering, uppermost pile first. */
function redealt(n: number, order: readonly number[], keeping = false): number[] {
  const deal = `Deal the packet into ${order.length} piles${keeping ? ' face up' : ''}.`;
  const gather = `Gather the piles in the order ${order.join(' ')}.`;
  return onlyOrder(n, deal, gather, ...(keeping ? ['Turn the packet over.'] : []));
}

const known = new Map<string, number[]>();

/**
 * The place a card comes to when the pile that holds it is put `nth` from the top of the packet as next dealt, the others in
 * some order. `keeping`: dealt face up and turned over when gathered, so that piles keep their order.
 */
function told(n: number, piles: number, place: number, nth: number, keeping = false): number {
  const pile = ((place - 1) % piles) + 1;
  const order = Array.from({ length: piles }, (_, i) => i + 1).filter((p) => p !== pile);
  order.splice((keeping ? piles - nth + 1 : nth) - 1, 0, pile);
  const key = `${n} ${order.join(' ')} ${keeping}`;
  let after = known.get(key);
  if (after === undefined) known.set(key, (after = redealt(n, order, keeping)));
  return after.indexOf(place) + 1;
}

function toldAll(n: number, piles: number, place: number, nths: readonly number[], keeping = false): number {
  return nths.reduce((at, nth) => told(n, piles, at, nth, keeping), place);
}

const places = cards(3).flatMap((a) => cards(3).flatMap((b) => cards(3).map((c) => [a, b, c] as const)));

describe('27 cards, three deals', () => {
  // W. W. Rouse Ball, Mathematical Recreations and Essays, 4th ed. 1905, Gergonne's Pile Problem.
  test('piles reversed: 9c - 3b + a, whatever the card', () => {
    for (const [a, b, c] of places)
      for (const card of cards(27)) expect(toldAll(27, 3, card, [a, b, c])).toBe(9 * c - 3 * b + a);
    expect(toldAll(27, 3, 5, [1, 2, 3])).toBe(22);
    expect(toldAll(27, 3, 5, [3, 3, 3])).toBe(21);
    expect(toldAll(27, 3, 5, [2, 2, 2])).toBe(14);
  });
  // OEIS A264386 (after M. Gardner, Mathematics, Magic and Mystery, 1956); M. Kraitchik, Mathematical Recreations, p. 318.
  test('piles keeping their order: 1 + (a-1) + 3(b-1) + 9(c-1)', () => {
    const a264386 = [
      1, 10, 19, 4, 13, 22, 7, 16, 25, 2, 11, 20, 5, 14, 23, 8, 17, 26, 3, 12, 21, 6, 15, 24, 9, 18, 27,
    ];
    places.forEach(([a, b, c], i) => {
      for (const card of cards(27)) expect(toldAll(27, 3, card, [a, b, c], true)).toBe(a264386[i]);
      expect(a264386[i]).toBe(1 + (a - 1) + 3 * (b - 1) + 9 * (c - 1));
    });
    // To come 16th: 0, then 2, then 1 piles above the told pile.
    expect(toldAll(27, 3, 7, [1, 3, 2], true)).toBe(16);
  });
});

// W. W. Rouse Ball 1905, Gergonne's Generalization; L. E. Dickson, Bull. Amer. Math. Soc. 1 (1895) 184-186.
test('256 cards in four piles, told piles 3rd, 4th, 1st, 2nd: 126th', () => {
  const [a, b, c, d] = [3, 4, 1, 2];
  for (const card of [1, 8, 100, 256]) {
    const before = toldAll(256, 4, card, [a, b, c]);
    expect(Math.ceil(before / 4)).toBe(64 - 62 + 1);
    expect(told(256, 4, before, d)).toBe(126);
  }
  expect(64 * d - 16 * c + 4 * b - a + 1).toBe(126);
});

// W. W. Rouse Ball 1905, The Three Pile Problem; J. Champanerkar, M. Jani, arXiv:1308.3396.
test.each([
  [3, 5, 3, 8],
  [3, 7, 3, 11],
  [3, 9, 3, 14],
  [3, 11, 4, 17],
  [3, 13, 4, 20],
  [3, 15, 4, 23],
  [3, 27, 4, 41],
  [3, 29, 5, 44],
  [5, 3, 2, 8],
  [5, 5, 2, 13],
  [5, 7, 3, 18],
  [5, 9, 3, 23],
  [5, 11, 3, 28],
  [7, 3, 2, 11],
  [7, 7, 2, 25],
  [9, 3, 2, 14],
])('%i piles of %i, told pile in the middle: after %i deals at %i', (piles, each, deals, place) => {
  const n = piles * each;
  const after = (times: number): Set<number> =>
    new Set(
      cards(n).map((card) =>
        toldAll(
          n,
          piles,
          card,
          Array.from({ length: times }, () => (piles + 1) / 2),
        ),
      ),
    );
  expect([...after(deals)]).toEqual([place]);
  expect(after(deals - 1).size).toBeGreaterThan(1);
});

// W. W. Rouse Ball 1905, end of Gergonne's Pile Problem (after Hudson and Dickson).
test('32 cards in four piles: after two deals the card is one of two in its pile', () => {
  for (const a of cards(4))
    for (const card of cards(32)) {
      const before = told(32, 4, card, a);
      // Place in its pile of eight, from the top, after the second deal.
      const depth = 8 - Math.floor((before - 1) / 4);
      expect(depth).toBeGreaterThan(8 - 2 * a);
      expect(depth).toBeLessThanOrEqual(8 - 2 * (a - 1));
    }
});

/** First dealt to first gathered read from the bottom: pile k lowest, then k - r, k - 2r, ... */
function multiplied(n: number, k: number): number[] {
  const r = n % k;
  const order = Array.from({ length: k }, (_, i) => ((((k - i * r - 1) % k) + k) % k) + 1);
  return redealt(n, order.reverse()).reverse();
}

// C. S. Peirce, Writings, vol. 8; P. Diaconis, R. Graham, The magic of Charles Sanders Peirce (2017).
describe('dealing into piles multiplies', () => {
  test('ten cards into three', () => {
    expect(multiplied(10, 3)).toEqual([3, 6, 9, 2, 5, 8, 1, 4, 7, 10]);
  });
  test('place i from the back holds k i modulo n', () => {
    const prime = cards(23).flatMap((n) =>
      cards(n - 1)
        .filter((k) => k > 1 && gcd(n, k) === 1)
        .map((k) => [n, k] as const),
    );
    for (const [n, k] of prime) expect(multiplied(n, k)).toEqual(cards(n).map((i) => ((k * i - 1) % n) + 1));
  });
  test('53 cards into twelve, restored by dealing into 31', () => {
    const twelve = multiplied(53, 12);
    expect(multiplied(53, 31).map((i) => twelve[i - 1])).toEqual(cards(53));
  });
});

test('every order of the other piles gives the same place', () => {
  for (const card of cards(9))
    for (const order of orders([1, 2, 3])) {
      const nth = order.indexOf(((card - 1) % 3) + 1) + 1;
      expect(redealt(9, order).indexOf(card) + 1).toBe(told(9, 3, card, nth));
    }
});
