import { describe, expect, test } from 'vitest';
import { compareSteps } from '../../src/insight/likeness/same.ts';
import { mixingOf, risingSequences } from '../../src/insight/mixing/mixing.ts';
import { ordersByRisingSequences, riffleDistanceNumber } from '../../src/insight/mixing/riffle-distance.ts';
import { ordersAfterRiffles } from '../../src/insight/mixing/final-orders.ts';
import { placeChances } from '../../src/insight/mixing/place-chances.ts';
import { check } from '../../src/check.ts';
import { mixingReport } from '../../src/report/mixing-report.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { MoveStep } from '../../src/routine/routine.ts';
import { decide } from '../../src/proving/decide.ts';
import { anyTimes, move, numbered, working } from '../naive/write.ts';
import { outcomes } from '../published/outcomes.ts';
import { orders } from '../published/structures.ts';

describe('riffles', () => {
  test('distance from well mixed for 52 cards', () => {
    // D. Bayer and P. Diaconis, Trailing the dovetail shuffle to its lair, Annals of Applied Probability 2 (1992), table 1.
    const published = [1, 1, 1, 1, 0.924, 0.614, 0.334, 0.167, 0.085, 0.043];
    published.forEach((value, i) => expect(riffleDistanceNumber(52, i + 1)).toBeCloseTo(value, 3));
  });

  test('orders by rising sequences, counted one by one', () => {
    for (const n of [1, 2, 3, 4, 5, 6]) {
      const counts = new Array<bigint>(n).fill(0n);
      for (const order of orders(Array.from({ length: n }, (_, i) => i)))
        counts[risingSequences(order) - 1]++;
      expect(ordersByRisingSequences(n)).toEqual(counts);
    }
  });

  test('one riffle of five cards: the distance by listing every way the cards can fall', () => {
    // Every card comes from the upper or the lower packet, all 2^5 ways alike; each gives one order.
    const n = 5;
    const chances = new Map<string, number>();
    for (let way = 0; way < 1 << n; way++) {
      const upper = Array.from({ length: n }, (_, i) => (way >> i) & 1).filter((bit) => bit === 0).length;
      let [top, low] = [0, upper];
      const order = Array.from({ length: n }, (_, i) => (((way >> i) & 1) === 0 ? top++ : low++)).join();
      chances.set(order, (chances.get(order) ?? 0) + 1 / 2 ** n);
    }
    let off = 120 - chances.size;
    for (const chance of chances.values()) off += Math.abs(chance * 120 - 1);
    expect(riffleDistanceNumber(n, 1)).toBeCloseTo(off / 240, 10);
  });
});

describe('final orders', () => {
  test.each([
    ['Cut the packet.', 6],
    ['Riffle the packet.', 6],
    ['Deal any number of cards to the table and riffle the two packets together.', 5],
    ['Overhand-shuffle the packet.', 6],
    ['Take pairs off the packet, leaving or turning each.', 6],
    ['Shuffle within each pair.', 6],
  ])('%s %i cards: as many as there are', (sentence, n) => {
    const decision = decide(working(numbered(n), sentence));
    const { orders: found } = mixingOf(decision, { states: 100_000, runs: 50, seed: 1 }, DEFAULT_LIMITS);
    const count = BigInt(outcomes(n, sentence).length);
    expect(found).toMatchObject({ least: count, most: count });
  });

  test('a riffle of n cards leaves 2^n - n orders; riffles are counted by rising sequences', () => {
    expect(ordersAfterRiffles(8, 1)).toBe(2n ** 8n - 8n);
    for (const [times, n] of [
      [1, 8],
      [2, 5],
      [2, 6],
    ]) {
      const riffles = Array.from({ length: times }, () => 'Riffle the packet.');
      const count = BigInt(outcomes(n, ...riffles).length);
      expect(ordersAfterRiffles(n, times)).toBe(count);
      const { orders: found } = mixingOf(
        decide(working(numbered(n), ...riffles)),
        { states: 10, runs: 10, seed: 1 },
        DEFAULT_LIMITS,
      );
      expect(found).toMatchObject({ least: count, most: count, by: 'riffles' });
    }
  });

  test('beyond the budget there are bounds, and the truth lies between them', () => {
    const sentence = 'Overhand-shuffle the packet.';
    const decision = decide(working(numbered(9), sentence));
    const { orders: found } = mixingOf(decision, { states: 40, runs: 60, seed: 1 }, DEFAULT_LIMITS);
    if (found === null) throw new Error('nothing gets stuck');
    const truth = BigInt(outcomes(9, sentence).length);
    expect(found.by).toBe('bounds');
    expect(found.least <= truth && truth <= found.most).toBe(true);
    expect(found.least > 1n).toBe(true);
  });

  test('looks are those of the one order where nothing is chosen', () => {
    const decision = decide(working(numbered(6), 'Turn the packet over.'));
    const { looks, places } = mixingOf(decision, { states: 1000, runs: 5, seed: 1 }, DEFAULT_LIMITS);
    // 6 5 4 3 2 1: cards travel 5 3 1 1 3 5 places, and every card begins a chain of its own.
    expect(looks).toMatchObject({ runs: 5, travel: 3, rising: 6, neighbours: 0, met: 1 });
    expect(places).toMatchObject({
      how: 'exact',
      evenness: { travel: 3, worst: { place: 1, to: 6, chance: 1 } },
    });
  });
});

describe('in words', () => {
  const report = (cards: string, ...working: readonly string[]) => {
    const steps = working.map((sentence, i) => `${i + 1}. ${sentence}`).join('\n');
    const text = `## Set-up\n\n- packet: ${cards}, face down\n\n## Working\n\n${steps}\n\n## Ending\n\n- All cards are face down.\n`;
    const found = mixingReport(check(text), { runs: 50 }, DEFAULT_LIMITS);
    if (!found.ok) throw new Error(found.error.code);
    return found.value;
  };

  test('riffles: their distance, and what is said of it', () => {
    for (const [times, said] of [
      [2, 'far from mixed'],
      [5, 'partly mixed'],
      [9, 'well mixed'],
    ] as const) {
      const riffles = Array.from({ length: times }, () => 'Riffle the packet.');
      const { riffles: found, words } = report('20 cards in any order', ...riffles);
      expect(found).toMatchObject({ count: times, whole: true });
      expect(found?.distance).toBeCloseTo(riffleDistanceNumber(20, times), 12);
      expect(words).toContain(said);
    }
    const among = report(
      '8 cards in any order',
      'Riffle the packet.',
      'Cut the packet.',
      'Riffle the packet.',
    );
    expect(among.riffles).toMatchObject({ count: 2, whole: false });
  });

  test('what is certain is said apart from what it looks like', () => {
    expect(report('8 cards in any order', 'Turn the packet over.').words).toMatch(
      /^Nothing is mixed: there is one final order\./,
    );
    const cut = report('8 cards in any order', 'Cut the packet.');
    expect(cut.orders).toMatchObject({ least: '8', most: '8', exact: true });
    expect(cut.words).toContain('It is not mixed: 8 of the 40,320 ways');
    expect(report('5 cards in any order', 'Shuffle the packet.').words).toContain(
      'Cards are shuffled freely',
    );
  });
});

describe('where cards end', () => {
  // Every way to cut and let fall, all 2^n falls alike: the chances of one riffle, listed.
  test('one riffle', () => {
    const n = 6;
    const truth = Array.from({ length: n }, () => new Array<number>(n).fill(0));
    for (let way = 0; way < 1 << n; way++) {
      const upper = Array.from({ length: n }, (_, i) => (way >> i) & 1).filter((bit) => bit === 0).length;
      let [top, low] = [0, upper];
      for (let to = 0; to < n; to++) truth[((way >> to) & 1) === 0 ? top++ : low++][to] += 1 / 2 ** n;
    }
    const { graph, region } = decide(working(numbered(n), 'Riffle the packet.'));
    if (region === undefined) throw new Error('the graph is small');
    const chances = placeChances(graph, region);
    chances?.forEach((row, from) =>
      row.forEach((chance, to) => expect(chance).toBeCloseTo(truth[from][to], 12)),
    );
    expect(chances).toHaveLength(n);
  });

  test('a cut puts every card anywhere alike; where steps go on without end nothing exact is said', () => {
    const cut = decide(working(numbered(5), 'Cut the packet.'));
    const found = mixingOf(cut, { states: 1000, runs: 10, seed: 1 }, DEFAULT_LIMITS).places;
    expect(found?.how).toBe('exact');
    expect(found?.evenness.mean).toBeLessThan(0.2);
    const endless = decide(working(numbered(5), anyTimes('Cut the packet.')));
    expect(mixingOf(endless, { states: 1000, runs: 10, seed: 1 }, DEFAULT_LIMITS).places?.how).toBe(
      'sampled',
    );
  });
});

describe('the same or not', () => {
  const list = (...sentences: string[]): MoveStep[] => sentences.map(move);

  test.each([
    [['Cut the packet.'], ['Cut the packet.', 'Cut the packet.'], 'the same'],
    [['Give the packet a haymow shuffle.'], ['Cut the packet.'], 'the same'],
    [
      ['Milk the packet.', 'Monge-shuffle the packet, the second beneath.'],
      ['Turn the packet over.', 'Turn the packet over.'],
      'the same',
    ],
    [['Cut the packet.'], ['Cut the packet at an even number.'], 'more'],
    [['Out-faro the packet.'], ['In-faro the packet.'], 'different'],
    [['Riffle the packet.'], ['Overhand-shuffle the packet.'], 'different'],
  ])('%j and %j: %s', (one, other, wanted) => {
    const n = 6;
    const { is } = compareSteps(list(...one), list(...other), n);
    const sets = [one, other].map(
      (sentences) => new Set(outcomes(n, ...sentences).map((came) => JSON.stringify(came))),
    );
    const [a, b] = sets;
    const shared = [...a].filter((key) => b.has(key)).length;
    const truth =
      shared === a.size && shared === b.size
        ? 'the same'
        : shared === a.size || shared === b.size
          ? 'more'
          : 'different';
    expect({ is, truth }).toEqual({ is: wanted, truth: wanted });
  });
});
