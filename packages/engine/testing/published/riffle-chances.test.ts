import { describe, expect, test } from 'vitest';
import { Budget } from '../../src/base/budget.ts';
import { toNumber } from '../../src/base/rational.ts';
import { placeChances } from '../../src/insight/mixing/place-chances.ts';
import { chanceOf } from '../../src/proving/chance.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS, Meanings } from '../../src/proving/question.ts';
import { Graph } from '../../src/routine/graph.ts';
import { startsOf } from '../../src/routine/starts.ts';
import { routineOf } from '../effects/by-both.ts';
import { numbered, working } from '../naive/write.ts';

/**
 * Distance from a random order after k riffles, from the chances of all orders of four cards, against D. Bayer and P. Diaconis, Trailing
 * the dovetail shuffle to its lair, 1992, Theorem 1: an order with r rising sequences has the chance C(2^k + n - r, n) / 2^(kn).
 */
describe.each([1, 2, 3])('all orders of four cards after %i riffles', (k) => {
  const cards = ['AS', '2S', '3S', '4S'];
  const orders = cards.flatMap((a) =>
    cards.flatMap((b) =>
      cards.flatMap((c) => cards.flatMap((d) => (new Set([a, b, c, d]).size === 4 ? [[a, b, c, d]] : []))),
    ),
  );

  test('have the chances of the theorem', () => {
    const routine = routineOf(
      `packet: ${cards.join(' ')}, face down`,
      `1. ${k} times: riffle the packet.`,
      ...orders.map((order) => `The packet reads ${order.join(' ')} from the top.`),
    );
    const question = {
      graph: new Graph(routine),
      starts: startsOf(routine),
      limits: DEFAULT_LIMITS,
      budget: new Budget(DEFAULT_LIMITS.work),
    };
    const choose4 = (m: number): number => Math.max(0, (m * (m - 1) * (m - 2) * (m - 3)) / 24);
    orders.forEach((order, i) => {
      const meanings = new Meanings(routine.endings[i].sentence, question);
      const chance = chanceOf(question, meanings, { states: 20_000, runs: 1, seed: 1 });
      if (chance.kind !== 'exact') throw new Error(`a chance that is ${chance.kind}`);
      const places = cards.map((card) => order.indexOf(card));
      const rising = 1 + places.filter((place, j) => j > 0 && place < places[j - 1]).length;
      expect(toNumber(chance.value)).toBeCloseTo(choose4(2 ** k + 4 - rising) / 2 ** (4 * k), 12);
    });
  });
});

/**
 * S. Assaf, P. Diaconis and K. Soundararajan, A rule of thumb for riffle shuffling, 2011 (the table from memory, computed again): how far
 * the place of the card that was on top is from even, after 1 to 12 riffles of 52 cards.
 */
test('how fast the top card of 52 gets lost in riffles', () => {
  const published = [
    0.872596, 0.751839, 0.577474, 0.367437, 0.200361, 0.102681, 0.051667, 0.025867, 0.012942, 0.006472,
    0.003236, 0.001618,
  ];
  const { graph, region } = decide(working(numbered(52), 'Riffle the packet.'));
  if (region === undefined) throw new Error('the graph of a riffle is small');
  const once = placeChances(graph, region);
  if (once === null) throw new Error('a riffle ends');
  let places: number[] = Array.from({ length: 52 }, (_, place) => (place === 0 ? 1 : 0));
  for (const distance of published) {
    places = places.map((_, to) => places.reduce((sum, chance, from) => sum + chance * once[from][to], 0));
    const off = places.reduce((sum, chance) => sum + Math.abs(chance - 1 / 52), 0) / 2;
    expect(off).toBeCloseTo(distance, 6);
  }
});
