import { describe, expect, test } from 'vitest';
import { outcomes } from './outcomes.ts';

/** Number of arrangements, faces counted, that any sequence of these mixes reaches from n cards face down. */
function reached(n: number, ...mixes: readonly (readonly string[])[]): number {
  const made = mixes.map((mix) => {
    const [packet] = outcomes(n, ...mix);
    return packet.map(({ from, up }) => 2 * (from - 1) + up);
  });
  // A packet as text: one character a card, its number doubled plus its face.
  const seen = new Set([String.fromCharCode(...Array.from({ length: n }, (_, i) => 2 * i))]);
  for (const packet of seen)
    for (const mix of made)
      seen.add(String.fromCharCode(...mix.map((from) => packet.charCodeAt(from >> 1) ^ (from & 1))));
  return seen.size;
}

// P. Diaconis, R. L. Graham, W. M. Kantor, Adv. in Appl. Math. 4 (1983), main theorem; OEIS A007346.
test.each([
  [2, 2],
  [4, 8],
  [6, 24],
  [8, 24],
  [10, 1920],
  [12, 7680],
  [16, 64],
  [32, 160],
])('in- and out-faros of %i cards: %i arrangements', (n, order) => {
  expect(reached(n, ['Out-faro the packet.'], ['In-faro the packet.'])).toBe(order);
});

// S. W. Golomb, Permutations by cutting and shuffling, SIAM Review 3 (1961) 293-297, from memory.
describe('faros and cuts', () => {
  test.each([
    [4, 24],
    [6, 720],
    [3, 6],
    [5, 20],
    [7, 21],
    [9, 54],
    [11, 110],
    [13, 156],
    [15, 60],
    [17, 136],
    [19, 342],
    [21, 126],
    [23, 253],
    [25, 500],
  ])('%i cards: %i arrangements', (n, order) => {
    expect(reached(n, ['Out-faro the packet.'], ['Cut the packet at 1.'])).toBe(order);
    expect(reached(n, ['In-faro the packet.'], ['Cut the packet at 1.'])).toBe(order);
  });
});

const flip = ['Turn over the bottom half of the packet.'];
const horseshoe = [...flip, 'Turn each of the bottom half of the packet over in place.'];

// S. Butler, P. Diaconis, R. Graham, The mathematics of the flip and horseshoe shuffles, Amer. Math. Monthly 123 (2016); OEIS
// A274305 (lower half reversed before the weave) and A274303 (turned over).
describe('faros with the lower half reversed or turned over', () => {
  test.each([
    [2, 2],
    [4, 12],
    [6, 120],
    [8, 32],
    [16, 80],
    [32, 192],
  ])('reversed, %i cards: %i arrangements', (n, order) => {
    const mixes = [
      [...horseshoe, 'Out-faro the packet.'],
      [...horseshoe, 'In-faro the packet.'],
    ] as const;
    expect(reached(n, ...mixes)).toBe(order);
  });
  test.each([
    [2, 8],
    [4, 24],
    [6, 7680],
    [8, 64],
    [16, 160],
  ])('turned over, %i cards: %i arrangements', (n, order) => {
    expect(reached(n, [...flip, 'Out-faro the packet.'], [...flip, 'In-faro the packet.'])).toBe(order);
  });
  test('turned over, ten cards: the out-weave alone restores order and faces after 18', () => {
    expect(reached(10, [...flip, 'Out-faro the packet.'])).toBe(18);
  });
});

// Diaconis, Graham, Kantor 1983, appendix; A. Luers, Dodecahedral faces of M12 (1997): twelve cards give M12, of order 95040.
test.each([
  [8, 32],
  [12, 95_040],
  [16, 80],
])('Monge or milk and reversal on %i cards: %i arrangements', (n, order) => {
  const reversal = ['Deal the packet into a pile.'];
  expect(reached(n, ['Monge-shuffle the packet.'], reversal)).toBe(order);
  expect(reached(n, ['Milk the packet.'], reversal)).toBe(order);
});
