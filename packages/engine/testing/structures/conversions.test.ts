import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/routine/routine.ts';
import { either } from '../naive/write.ts';
import {
  adjacentMates,
  alternating,
  classByFace,
  cyclicMirror,
  cyclicStack,
  exactPeriod,
  faceClassParity,
  halfOffset,
  halfOffsetOpposites,
  mirroredMates,
  mirroredOpposites,
  oppositesInPairs,
  type Structure,
} from '../published/structures.ts';
import { structuresIn } from '../../src/structures/recognise.ts';
import { followedThrough, laidRoutine } from './laid-routine.ts';

// Which mix turns which structure into which, as the engine says it: what is certain at the end, in the trade's words. Common
// practice, no source; that it is so is enumerated beside the published structures.

const monge = either(['Monge-shuffle the packet.'], ['Monge-shuffle the packet, the second beneath.']);
const GILBREATH = 'Deal any number of cards to the table and riffle the two packets together.';
const TURN_SECOND = 'Deal the packet into a pile, turning every second card.';
const EVEN = [6, 8, 10];

/** The structures that are certain at the end whatever the start that has the first; those too that follow from stronger ones. */
function certain(n: number, from: Structure, mix: readonly (string | Step)[], id: string): string[] {
  const all = from.starts(n).map((start) => {
    const { followed, graph, ends } = followedThrough(laidRoutine(start, mix));
    const subject = followed.subjects.find((one) => one.id === id);
    const [end] = ends;
    const vectors = subject === undefined ? null : followed.vectorsAt(end, subject);
    if (subject === undefined || vectors === null) throw new Error(`${id} is not followed`);
    const found = structuresIn(vectors, graph.locations[end].layout, subject);
    return new Set(found.map(({ trade, words }) => `${trade} ${words}`));
  });
  return [...all[0]].filter((name) => all.every((one) => one.has(name)));
}

const PAIRS = 'the two cards of each pair from the top';
const MIRROR = 'mirror pairs, counted from both ends,';
const HALF = 'cards half the packet apart';

describe.each([
  ['alternating', alternating, [], 'S1 the kinds alternate'],
  ['milk', alternating, ['Milk the packet.'], `S5 ${PAIRS} differ in kind`],
  ['cut, deal any number, riffle', alternating, ['Cut the packet.', GILBREATH], `S5 ${PAIRS} differ in kind`],
  ['Monge', alternating, [monge], ' the cards within each half are alike in kind'],
  [
    'two heaps',
    alternating,
    ['Deal the packet into 2 piles.', 'Gather the piles in any order.'],
    ' the cards within each half are alike in kind',
  ],
  [
    'down-under',
    alternating,
    ['Deal the packet down-under into a pile.'],
    ' the cards within each half are alike in kind',
  ],
  ['milk', mirroredMates, ['Milk the packet.'], `S5 ${PAIRS} are alike in kind`],
  ['milk', mirroredOpposites, ['Milk the packet.'], `S5 ${PAIRS} differ in kind`],
  ['Monge', adjacentMates, [monge], `S2 ${MIRROR} are alike in kind`],
  ['Monge', oppositesInPairs, [monge], `S2 ${MIRROR} differ in kind`],
  ['Monge', mirroredMates, [monge], `S4 ${HALF} are alike in kind`],
  ['Monge', mirroredOpposites, [monge], `S4 ${HALF} differ in kind`],
  ['milk', halfOffset, ['Milk the packet.'], `S2 ${MIRROR} are alike in kind`],
  ['milk', halfOffsetOpposites, ['Milk the packet.'], `S2 ${MIRROR} differ in kind`],
  ['out-faro', halfOffset, ['Out-faro the packet.'], `S5 ${PAIRS} are alike in kind`],
  ['in-faro', halfOffset, ['In-faro the packet.'], `S5 ${PAIRS} are alike in kind`],
  ['strip out', adjacentMates, ['Anti-faro the packet.'], `S4 ${HALF} are alike in kind`],
  ['a cut', halfOffset, ['Cut the packet.'], `S4 ${HALF} are alike in kind`],
] as const)('%s', (_mix, from, mix, wanted) => {
  test.each(EVEN)(`%i cards: ${from.name}, then ${wanted}`, (n) => {
    expect(certain(n, from, mix, 'kind')).toContain(wanted);
  });
});

describe('faces and classes', () => {
  test.each([
    [
      'turnover order',
      faceClassParity,
      [],
      'S6 neighbours face the same way exactly where they differ in kind',
    ],
    [
      'kept by cut and turn over two',
      faceClassParity,
      ['Cut and turn over the top 2.'],
      'S6 neighbours face the same way exactly where they differ in kind',
    ],
    [
      'every second turned',
      faceClassParity,
      [TURN_SECOND],
      'S7 all cards face the same way exactly where they are alike in kind',
    ],
    [
      'and back',
      classByFace,
      [TURN_SECOND],
      'S6 neighbours face the same way exactly where they differ in kind',
    ],
  ] as const)('%s', (_name, from, mix, wanted) => {
    // Where all are of one class, or face one way for good, there is nothing to follow.
    const both: Structure = {
      ...from,
      starts: (n) =>
        from
          .starts(n)
          .filter(
            (laid) =>
              new Set(laid.map(({ x }) => x)).size === 2 && new Set(laid.map(({ up }) => up)).size === 2,
          ),
    };
    expect(certain(6, both, mix, 'kind with facing')).toContain(wanted);
  });
});

describe('periods and stacks', () => {
  test('exact period, then dealt and riffled: block form', () => {
    expect(certain(6, exactPeriod(3), [], 'kind')).toContain('S8 cards 3 places apart are alike in kind');
    expect(certain(8, exactPeriod(4), [GILBREATH], 'kind')).toContain(
      'S8 every block of 4 from the top has one of each kind',
    );
    expect(certain(6, exactPeriod(3), [GILBREATH], 'kind')).toContain(
      'S8 every block of 3 from the top has one of each kind',
    );
  });
  test('a mirror cut at a known number is a mirror going round', () => {
    for (const start of mirroredMates.starts(8)) {
      const { followed, ends } = followedThrough(laidRoutine(start, ['Cut the packet at 3.']));
      const found = followed.certainAt(ends[0]).map(({ trade, name }) => `${trade} ${name}`);
      expect(found).toContain('S3 mirrored going round');
    }
    expect(certain(8, cyclicMirror, ['Cut the packet.'], 'kind')).toEqual([]);
  });
  test('a cyclic stack of a prime number of values goes by steps; counted through, by the opposite step', () => {
    const [start] = cyclicStack.starts(7).filter((laid) => laid[1].x - laid[0].x === 2);
    const told = (mix: readonly string[]): string[] => {
      const routine = laidRoutine(start, mix, 'value', (x) => x + 1);
      const { followed, ends } = followedThrough(routine);
      return followed.certainAt(ends[0]).map(({ trade, words }) => `${trade} ${words}`);
    };
    expect(told([])).toContain('S13 the values go up by 2 each time, counting round after 7');
    expect(told(['Cut the packet.'])).toContain(
      'S13 the values go up by 2 each time, counting round after 7',
    );
    expect(told(['Deal the packet into a pile.'])).toContain(
      'S13 the values go up by 5 each time, counting round after 7',
    );
  });
  test('sums of mates travel with them: mirrored, one half turned over, half-offset', () => {
    const values = [3, 9, 5, 12, 2, 9, 5, 11];
    const start = values.map((x) => ({ x, up: 0, end: 0 }));
    const told = (mix: readonly string[]): string[] => {
      const { followed, ends } = followedThrough(laidRoutine(start, mix, 'value', (x) => x));
      return followed.certainAt(ends[0]).map(({ trade, words }) => `${trade} ${words}`);
    };
    expect(told([])).toContain('S14 the values of mirror pairs, counted from both ends, add up to 14');
    expect(told(['Turn over the top 4 cards.'])).toContain(
      'S14 the values of cards half the packet apart add up to 14',
    );
  });
});
