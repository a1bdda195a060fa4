import { describe, expect, test } from 'vitest';
import { cards, cycleOrder, exits, followedBy, onlyOrder, packetOf } from './outcomes.ts';
import { ANY_CARD_TO_TOP_OF_52, IN_FARO_ORDERS, IN_FARO_REVERSES, OUT_FARO_ORDERS } from './values.ts';

const out = (n: number): number[] => onlyOrder(n, 'Out-faro the packet.');
const into = (n: number): number[] => onlyOrder(n, 'In-faro the packet.');

test.each([
  ['out', out, OUT_FARO_ORDERS],
  ['in', into, IN_FARO_ORDERS],
] as const)('%s-faros that restore 2 to 104 cards', (_way, faro, orders) => {
  expect(orders.map((_, i) => cycleOrder(faro(i + 2)))).toEqual(orders);
});

test('eight out-faros or 52 in-faros restore 52 cards', () => {
  expect(cycleOrder(out(52))).toBe(8);
  expect(cycleOrder(into(52))).toBe(52);
});

// P. Diaconis, R. L. Graham, W. M. Kantor, Adv. in Appl. Math. 4 (1983), section 1; the formulas from memory.
describe('where one card goes', () => {
  test('ten cards', () => {
    expect(out(10).map((from) => from - 1)).toEqual([0, 5, 1, 6, 2, 7, 3, 8, 4, 9]);
    expect(into(10).map((from) => from - 1)).toEqual([5, 0, 6, 1, 7, 2, 8, 3, 9, 4]);
  });
  test('every card of every even packet', () => {
    for (let n = 2; n <= 104; n += 2) {
      const [after, afterIn] = [out(n), into(n)];
      for (let i = 0; i < n; i++) {
        expect(after.indexOf(i + 1)).toBe(i === n - 1 ? n - 1 : (2 * i) % (n - 1));
        expect(afterIn.indexOf(i + 1)).toBe((2 * i + 1) % (n + 1));
      }
    }
  });
  // A. Elmsley, The Mathematics of the Weave Shuffle (1957).
  test('52 cards, places counted from one', () => {
    const [after, afterIn] = [out(52), into(52)];
    for (const p of cards(52)) {
      expect(after.indexOf(p) + 1).toBe(p <= 26 ? 2 * p - 1 : 2 * p - 52);
      expect(afterIn.indexOf(p) + 1).toBe(p <= 26 ? 2 * p : 2 * p - 53);
    }
  });
});

// OEIS A321580; 26 in-faros reverse 52 cards: Elmsley 1957.
test('sizes that in-faros turn end for end', () => {
  const reversed = (n: number): boolean => {
    const step = into(n);
    const wanted = cards(n).reverse().join();
    for (let now = step, i = 0; i < 2 * n; i++, now = followedBy(now, step))
      if (now.join() === wanted) return true;
    return false;
  };
  expect(cards(104).slice(1).filter(reversed)).toEqual(IN_FARO_REVERSES.filter((n) => n > 1 && n <= 104));
});

/** Old places after a word of in- and out-faros, I and O. */
function after(n: number, word: string): number[] {
  return [...word].reduce((now, letter) => followedBy(now, letter === 'I' ? into(n) : out(n)), cards(n));
}

// A. Elmsley 1957, Binary Translocations; S. B. Morris, Magic Tricks, Card Shuffling and Dynamic Computer Memories (1998), p. 31.
describe('the top card to place k: k in binary, 1 = in, 0 = out', () => {
  test.each([
    [1, 'I'],
    [2, 'IO'],
    [5, 'IOI'],
    [6, 'IIO'],
    [14, 'IIIO'],
    [25, 'IIOOI'],
    [51, 'IIOOII'],
  ])('%i above it: %s', (k, word) => {
    expect(k.toString(2).replaceAll('1', 'I').replaceAll('0', 'O')).toBe(word);
    expect(after(52, word).indexOf(1)).toBe(k);
  });
  test('every place of 8, 10, 16, 31, 33 and 52 cards', () => {
    for (const n of [8, 10, 16, 31, 33, 52])
      for (let k = 1; k < n; k++)
        expect(after(n, k.toString(2).replaceAll('1', 'I').replaceAll('0', 'O')).indexOf(1)).toBe(k);
  });
  // A. Elmsley 1957: 32 cards, the 15th, OIII and an out-faro that may be dropped.
  test('a power of two: place p in as many digits brings that card to the top', () => {
    expect(after(32, 'OIII')[0]).toBe(15);
    for (const x of [1, 2, 3, 4, 5])
      for (let p = 0; p < 2 ** x; p++) {
        const digits = p.toString(2).padStart(x, '0');
        expect(after(2 ** x, digits.replaceAll('1', 'I').replaceAll('0', 'O'))[0]).toBe(p + 1);
      }
  });
});

// P. Diaconis, R. Graham, The solutions to Elmsley's problem, Math Horizons 14 (2007) 22-27; formula and table from memory.
describe('any card to the top of 52', () => {
  test('the words of the table', () => {
    ANY_CARD_TO_TOP_OF_52.forEach((word, i) => expect(after(52, word)[0]).toBe(i + 1));
  });
  test('the digits of the rule', () => {
    const [n, r] = [52, 6];
    for (let p = 0; p < n; p++) {
      const words: string[] = [];
      for (let t = 0; t < 2 ** r; t++) {
        const s = n * t - 2 ** r * p;
        if (s < 0 || s >= 2 ** r) continue;
        const digits = (t ^ s).toString(2).padStart(r, '0').replaceAll('1', 'I').replaceAll('0', 'O');
        expect(after(n, digits)[0]).toBe(p + 1);
        words.push(digits.replace(/O+$/, ''));
      }
      expect(Math.min(...words.map((word) => word.length))).toBe(ANY_CARD_TO_TOP_OF_52[p].length);
    }
  });
});

// Rusduck, The Cardiste 1 (1957); S. B. Morris 1998, ch. 1, The Stay-Stack Principle.
test.each([8, 10, 26, 52])('%i cards: which mixes commute with the mirror', (n) => {
  const mirror = (order: readonly number[]): boolean =>
    order.every((from, i) => order[n - 1 - i] === n + 1 - from);
  expect(mirror(out(n))).toBe(true);
  expect(mirror(into(n))).toBe(true);
  expect(mirror(onlyOrder(n, 'Deal the packet into a pile.'))).toBe(true);
  expect(mirror(onlyOrder(n, `Cut the packet at ${n / 2}.`))).toBe(true);
  expect(mirror(onlyOrder(n, 'Cut the packet at 1.'))).toBe(false);
  expect(mirror(onlyOrder(n, 'Monge-shuffle the packet.'))).toBe(false);
  expect(mirror(onlyOrder(n, 'Milk the packet.'))).toBe(false);
});

// A. Elmsley, Penelope's Principle (1988), in S. Minch, The Collected Works of Alex Elmsley vol. 2 (1994).
test('52 cards, one known at 26: c cards cut from the bottom, the rest woven, and it is c-th from the top', () => {
  for (const c of cards(25)) {
    // The upper part is the smaller one when the rest is odd, and the bottom card of the rest stays at the bottom.
    const weave = c % 2 === 0 ? 'Out-faro the upper.' : 'In-faro the upper.';
    const [{ moment }] = exits(52, `Cut off ${52 - c} cards to the upper.`, weave);
    expect(packetOf(moment.table, 'upper').findIndex(({ from }) => from === 26) + 1).toBe(c);
  }
});
