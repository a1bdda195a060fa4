import { expect, test } from 'vitest';
import { readAs } from '../../testing/packets.ts';
import { BitKinds, effectOf } from '../pictures/effect.ts';
import { layoutKey, layoutOf, type Layout } from '../pictures/layout.ts';
import { MOVES } from './index.ts';
import { isStuck, START, type Move, type Phase } from './move.ts';
import type { Args } from '../phrases/values.ts';

/** Moments of a working by step, phase and sizes, and the most ways on at any of them once a mix has begun. */
function moments(
  n: number,
  ...sentences: readonly string[]
): { moments: number; options: number; within: number } {
  const steps = sentences.map((sentence): [Move, Args] => {
    const [found] = MOVES.flatMap((move) => readAs(move, sentence).map((args): [Move, Args] => [move, args]));
    if (found === undefined) throw new Error(`no move reads "${sentence}"`);
    return found;
  });
  const bits = new BitKinds();
  const known = new Set<string>();
  const queue: { at: number; phase: Phase; layout: Layout }[] = [];
  const visit = (at: number, phase: Phase, layout: Layout): void => {
    const key = `${at}/${String(phase)}/${layoutKey(layout)}`;
    if (known.has(key)) return;
    known.add(key);
    queue.push({ at, phase, layout });
  };
  let options = 0;
  let within = 0;
  visit(0, START, layoutOf([['packet', n]]));
  for (const { at, phase, layout } of queue) {
    if (at === steps.length) continue;
    const [move, args] = steps[at];
    const ways = move.options(args, { layout, phase, numbers: {}, seen: undefined });
    if (isStuck(ways)) throw new Error(ways.stuck.code);
    options += ways.length;
    if (phase !== START) within = Math.max(within, ways.length);
    for (const way of ways) {
      const { after } = effectOf(layout, way.actions, bits);
      if (way.next === null) visit(at + 1, START, after);
      else visit(at, way.next, after);
    }
  }
  return { moments: known.size, options, within };
}

test('a riffle of 52 is walked card by card in some 1,300 moments', () => {
  const found = moments(52, 'Riffle the packet.');
  // One to begin, one after, and every pair of sizes of at least one card with at most 52 together.
  expect(found.moments).toBe(2 + (52 * 51) / 2);
  expect(found.within).toBe(2);
});

test('deal any number, then riffle: as one sentence or as two', () => {
  const one = moments(52, 'Deal any number of cards to the table and riffle the two packets together.');
  const two = moments(
    52,
    'Deal any number of cards to the table.',
    'Riffle the packet and the table together.',
  );
  expect(one.moments).toBe(2 + (52 * 51) / 2);
  expect(two.moments).toBeLessThan(1500);
  expect(two.within).toBe(2);
});

test('other mixes remember nothing but sizes', () => {
  expect(moments(52, 'Overhand-shuffle the packet.').moments).toBe(52 + 1);
  expect(moments(52, 'Shuffle the packet.').moments).toBe(3);
  expect(moments(52, 'Shuffle within each pair.').moments).toBe(3);
  expect(moments(52, 'Strip out any number of cards and put them on top.').within).toBe(2);
  expect(moments(52, 'Strip out any number of cards and put them on top.').moments).toBeLessThan(1500);
});

test('piles gathered in any order: which are left is all that counts', () => {
  // The four piles as subsets that are still there, down to two, then the packet; and the packet before the deal.
  expect(moments(8, 'Deal the packet into 4 piles.', 'Gather the piles in any order.').moments).toBe(
    1 + 1 + 4 + 6 + 1,
  );
});
