import { describe, expect, test } from 'vitest';
import { Budget } from '../src/base/budget.ts';
import { compile } from '../src/note/compile.ts';
import { read } from '../src/note/read.ts';
import { chanceOf } from '../src/proving/chance.ts';
import type { Chance } from '../src/proving/chance-found.ts';
import { DEFAULT_LIMITS, Meanings } from '../src/proving/question.ts';
import { Graph } from '../src/routine/graph.ts';
import { startsOf } from '../src/routine/starts.ts';

function chance(setUp: string, working: string, ending: string, states = 100_000): Chance {
  const text = `## Set-up\n- packet: ${setUp}\n## Working\n${working}\n## Ending\n- ${ending}\n`;
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  const question = {
    graph: new Graph(routine),
    starts: startsOf(routine),
    limits: DEFAULT_LIMITS,
    budget: new Budget(1e7),
  };
  return chanceOf(question, new Meanings(routine.endings[0].sentence, question), {
    states,
    runs: 6000,
    seed: 3,
  });
}

const exactly = (n: bigint, d: bigint): Chance => ({ kind: 'exact', value: { n, d } });

// Chances of the textbook, worked by hand; common practice, no source.
describe('exact chances', () => {
  test('after a free shuffle every card is equally likely on top', () => {
    expect(
      chance('3 red cards, then 2 black cards', '1. Shuffle the packet.', 'The top card is red.'),
    ).toEqual(exactly(3n, 5n));
  });
  test('a packet in any order: two of four black cards on top of each other at both ends', () => {
    const ends = 'The top card is red and the bottom card is red.';
    expect(chance('2 red cards and 2 black cards, in any order', '1. Turn the packet over.', ends)).toEqual(
      exactly(1n, 6n),
    );
  });
  test('a cut at a number from 1 to 4', () => {
    expect(chance('AS 2H 3H 4H, face down', '1. Cut the packet at 1 to 4.', 'The top card is red.')).toEqual(
      exactly(3n, 4n),
    );
  });
  test('mixing within pairs, and the order of pairs', () => {
    const pairs = '2S 3H 4S 5H, face down';
    expect(chance(pairs, '1. Shuffle within each pair.', 'The top card is the 3H.')).toEqual(exactly(1n, 2n));
    expect(chance(pairs, '1. Shuffle the order of the pairs.', 'The top card is the 4S.')).toEqual(
      exactly(1n, 2n),
    );
    expect(chance(pairs, '1. Shuffle the order of the pairs.', 'The top card is the 5H.')).toEqual(
      exactly(0n, 1n),
    );
  });
  test('faces left to chance', () => {
    const mixed = '1. Shuffle the packet, turning cards as they like.';
    expect(chance('4 cards, face down', mixed, 'Exactly 2 cards are face up.')).toEqual(exactly(3n, 8n));
  });
  test('one riffle of three cards leaves the order with chance 1/2', () => {
    // Bayer and Diaconis 1992: a riffle of n cards is the identity with chance (n + 1) / 2^n.
    expect(
      chance('AS 2H 3H, face down', '1. Riffle the packet.', 'The packet is in the order it began in.'),
    ).toEqual(exactly(1n, 2n));
  });
});

test('a repetition without end has no chance', () => {
  const found = chance('AS 2H, face down', '1. Any number of times: cut the packet.', 'The top card is red.');
  expect(found).toMatchObject({ kind: 'none', why: { code: 'chance-endless' } });
});

test('too many tables: an estimate that says so and covers the truth', () => {
  const found = chance(
    'AS 2H 3H 4H 5H 6H 7H 8H, face down',
    '1. Shuffle the packet.',
    'The top card is red.',
    3,
  );
  if (found.kind !== 'estimate')
    throw new Error(
      `expected an estimate, found ${JSON.stringify(found, (_, v: unknown) => (typeof v === 'bigint' ? String(v) : v))}`,
    );
  expect(found.runs).toBe(6000);
  expect(found.low).toBeLessThan(7 / 8);
  expect(found.high).toBeGreaterThan(7 / 8);
  expect(found.high - found.low).toBeLessThan(0.03);
});
