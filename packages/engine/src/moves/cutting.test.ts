import { expect, test } from 'vitest';
import { everyOutcome, perform, printTable } from '../../testing/packets.ts';
import { bury } from './bury.ts';
import { cutHeaps } from './cut-heaps.ts';
import { cutOff } from './cut-off.ts';
import { cutPiles } from './cut-piles.ts';
import { cut } from './cut.ts';
import { haymow } from './haymow.ts';
import type { Move } from './move.ts';
import { transfer } from './transfer.ts';

const packet = (n: number) => Array.from({ length: n }, (_, i) => i + 1).join(' ');
const cutsOf = (n: number) => [...everyOutcome(cut, 'Cut the packet.', packet(n))].sort();
const outcomes = (move: Move, sentence: string, before: string) =>
  [...everyOutcome(move, sentence, before)].sort();

test.each([1, 2, 5, 8])('a cut of %i cards has as many outcomes as cards', (n) => {
  expect(cutsOf(n)).toHaveLength(n);
});

test('an even cut keeps the parity of every place when the packet is even', () => {
  for (const after of everyOutcome(cut, 'Cut the packet at an even number.', packet(8)))
    expect(after.split(' ').every((card, i) => (Number(card) + i) % 2 === 1)).toBe(true);
});

test.each([1, 2, 5, 8])('a haymow shuffle of %i cards is one cut', (n) => {
  expect(outcomes(haymow, 'Give the packet a haymow shuffle.', packet(n))).toEqual(cutsOf(n));
});

test.each([1, 4, 7])('transferring any number of %i cards is a cut, singly or as a block', (n) => {
  for (const how of ['singly', 'as a block'])
    expect(outcomes(transfer, `Transfer any number of cards from top to bottom ${how}.`, packet(n))).toEqual(
      cutsOf(n),
    );
});

test('a count beyond the packet goes round', () => {
  const run = perform(transfer, 'Transfer 20 cards singly from top to bottom.', packet(8), []);
  expect(printTable(run.table)).toBe('5 6 7 8 1 2 3 4');
});

test('three heaps put back in cyclic order are a cut, in the other three orders never', () => {
  for (const order of ['1 2 3', '2 3 1', '3 1 2', '1 3 2', '2 1 3', '3 2 1']) {
    const sentence = `Cut the packet into 3 heaps and reassemble them in the order ${order} from the top.`;
    const cyclic = ['1 2 3', '2 3 1', '3 1 2'].includes(order);
    const cuts = cutsOf(7);
    for (const after of everyOutcome(cutHeaps, sentence, packet(7)))
      expect(cuts.includes(after)).toBe(cyclic);
  }
});

test.each([
  [2, 'in any cyclic order'],
  [4, 'in any cyclic order'],
])('%i heaps put back %s are a cut', (heaps, order) => {
  const sentence = `Cut the packet into ${heaps} heaps and reassemble them ${order}.`;
  expect(outcomes(cutHeaps, sentence, packet(6))).toEqual(cutsOf(6));
});

test('three heaps in any order are the ways to exchange neighbouring blocks and no more', () => {
  // Counted by hand of all orders of 4 cards: identity and cuts 4, the rest by exchanging two of three blocks.
  const brute = new Set<string>();
  const cards = ['1', '2', '3', '4'];
  for (let a = 1; a <= 2; a++)
    for (let b = a + 1; b <= 3; b++) {
      const heaps = [cards.slice(0, a), cards.slice(a, b), cards.slice(b)];
      for (const [i, j, k] of [
        [0, 1, 2],
        [0, 2, 1],
        [1, 0, 2],
        [1, 2, 0],
        [2, 0, 1],
        [2, 1, 0],
      ])
        brute.add([...heaps[i], ...heaps[j], ...heaps[k]].join(' '));
    }
  const sentence = 'Cut the packet into 3 heaps and reassemble them in any order.';
  expect(outcomes(cutHeaps, sentence, packet(4))).toEqual([...brute].sort());
});

test('an order that is none, heaps without cards and unequal parts are said', () => {
  expect(cutHeaps.check?.({ pile: 'packet', into: 3, equal: false, order: [1, 1, 2] })).toMatchObject([
    { code: 'not-an-order' },
  ]);
  expect(outcomes(cutHeaps, 'Cut the packet into 3 heaps and reassemble them in any order.', '1 2')).toEqual([
    'stuck',
  ]);
  expect(outcomes(cutPiles, 'Cut the packet into 2 equal piles.', '1 2 3')).toEqual(['stuck']);
});

test('cut into piles: every pile gets a card', () => {
  const after = outcomes(cutPiles, 'Cut the packet into 3 piles.', packet(6));
  // Two cut places among five joints.
  expect(after).toHaveLength(10);
  expect(
    after.every((table) => table.includes('pile 1') && table.includes('pile 2') && table.includes('pile 3')),
  ).toBe(true);
});

test('a pile is cut into piles of which it is one', () => {
  expect(outcomes(cutPiles, 'Cut pile 1 into 2 piles.', 'pile 1: 1 2; pile 2: 3')).toEqual([
    'pile 1: 1; pile 2: 2 3',
  ]);
});

test('cutting off leaves cards in both parts unless the number is stated', () => {
  expect(outcomes(cutOff, 'Cut off any number of cards to the table.', '1 2 3')).toEqual([
    'packet: 2 3; table: 1',
    'packet: 3; table: 1 2',
  ]);
  expect(outcomes(cutOff, 'Cut off 3 cards to the table.', '1 2 3')).toEqual(['table: 1 2 3']);
  expect(outcomes(cutOff, 'Cut off 4 cards to the table.', '1 2 3')).toEqual(['stuck']);
  expect(outcomes(cutOff, 'Cut off half of the cards to the table.', '1 2 3')).toEqual(['stuck']);
});

test('in the middle is neither top nor bottom, anywhere may be both', () => {
  expect(outcomes(bury, 'Bury the top card in the middle.', packet(4))).toEqual(['2 1 3 4', '2 3 1 4']);
  expect(outcomes(bury, 'Bury the top card anywhere.', packet(4))).toHaveLength(4);
  expect(outcomes(bury, 'Bury the top card in the middle.', '1 2')).toEqual(['stuck']);
});
