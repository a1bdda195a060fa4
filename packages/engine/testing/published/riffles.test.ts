import { describe, expect, test } from 'vitest';
import { outcomes } from './outcomes.ts';
import { orders } from './structures.ts';
import { RIFFLE_COUNTS } from './values.ts';

const listed = (n: number, sentence: string): number[][] =>
  outcomes(n, sentence).map((packet) => packet.map(({ from }) => from));

const NUMBERS = [1, 2, 3, 4, 5, 6, 7, 8, 9];

describe('riffle', () => {
  test('2^n - n arrangements', () => {
    for (const n of NUMBERS) expect(outcomes(n, 'Riffle the packet.')).toHaveLength(RIFFLE_COUNTS[n]);
    expect(RIFFLE_COUNTS[9]).toBe(2 ** 9 - 9);
  });
  test('exactly the orders with at most two rising sequences', () => {
    const rising = (order: readonly number[]): number =>
      order.filter((card) => card > 1 && order.indexOf(card - 1) > order.indexOf(card)).length + 1;
    for (const n of [2, 4, 6]) {
      const found = new Set(listed(n, 'Riffle the packet.').map((order) => order.join()));
      const wanted = orders(NUMBERS.slice(0, n)).filter((order) => rising(order) <= 2);
      expect(found).toEqual(new Set(wanted.map((order) => order.join())));
    }
  });
  test('stripping out any cards is a riffle backwards', () => {
    const inverse = (order: readonly number[]): string =>
      order.map((_, i) => order.indexOf(i + 1) + 1).join();
    const riffles = new Set(listed(6, 'Riffle the packet.').map(inverse));
    const stripped = listed(6, 'Strip out any number of cards and put them on top.').map((o) => o.join());
    expect(new Set(stripped)).toEqual(riffles);
  });
});

// P. Diaconis, R. Graham, Magical Mathematics (Princeton 2012), ch. 5: the count from memory, the theorem read.
describe('deal off any number and riffle', () => {
  const GILBREATH = 'Deal any number of cards to the table and riffle the two packets together.';
  test('2^(n-1) arrangements', () => {
    for (const n of NUMBERS) expect(outcomes(n, GILBREATH)).toHaveLength(2 ** (n - 1));
  });
  test('turning the packet over reverses it just as well', () => {
    const turned = listed(6, 'Turn over any number of cards from the top and riffle them into the rest.');
    expect(new Set(turned.map((o) => o.join()))).toEqual(new Set(listed(6, GILBREATH).map((o) => o.join())));
  });
  test('four descriptions of the same orders', () => {
    const different = (list: readonly number[], j: number): boolean =>
      new Set(list.map((card) => card % j)).size === list.length;
    for (const n of [3, 5, 6]) {
      const js = NUMBERS.slice(0, n);
      const second = (p: readonly number[]): boolean => js.every((j) => different(p.slice(0, j), j));
      const third = (p: readonly number[]): boolean =>
        js.every((j) => {
          for (let k = 0; (k + 1) * j <= n; k++) if (!different(p.slice(k * j, (k + 1) * j), j)) return false;
          return true;
        });
      const fourth = (p: readonly number[]): boolean =>
        js.every((j) => Math.max(...p.slice(0, j)) - Math.min(...p.slice(0, j)) === j - 1);
      const found = new Set(listed(n, GILBREATH).map((order) => order.join()));
      for (const p of orders(js)) {
        const is = found.has(p.join());
        expect([second(p), third(p), fourth(p)]).toEqual([is, is, is]);
      }
    }
  });
  test('two examples', () => {
    const ten = new Set(listed(10, GILBREATH).map((order) => order.join()));
    expect(ten.has('5,6,4,7,8,3,2,9,1,10')).toBe(true);
    expect(listed(4, GILBREATH).map((order) => order.join())).not.toContain('1,3,2,4');
  });
});

// By enumeration: every way to break n cards into blocks.
test('overhand shuffle: 2^(n-1) arrangements', () => {
  for (const n of NUMBERS) expect(outcomes(n, 'Overhand-shuffle the packet.')).toHaveLength(2 ** (n - 1));
});
