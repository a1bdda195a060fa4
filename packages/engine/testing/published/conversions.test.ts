import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/routine/routine.ts';
import { either } from '../naive/write.ts';
import { cards, exits, exitsFrom, outcomes, packetOf, type Came } from './outcomes.ts';
import {
  adjacentMates,
  alternating,
  blockForm,
  classByFace,
  cyclicStack,
  exactPeriod,
  faceClassParity,
  halfOffset,
  halfOffsetOpposites,
  mirroredMates,
  mirroredOpposites,
  oppositesInPairs,
  stepOf,
  words,
  type Laid,
  type Structure,
} from './structures.ts';

// Which mix turns which structure into which: every start with the first, every choice, all of them must have the second.
// By enumeration; common practice, no source.

function laidAfter(start: readonly Laid[], came: readonly Came[]): Laid[] {
  return came.map(({ from, up, end }) => {
    const card = start[from - 1];
    return { x: card.x, up: card.up ^ up, end: card.end ^ end };
  });
}

/** Whether `holds` is true after every performance from every start. */
function always(
  n: number,
  structure: Structure,
  mix: readonly (string | Step)[],
  holds: (packet: readonly Laid[], start: readonly Laid[]) => boolean,
): boolean {
  const starts = structure.starts(n);
  if (starts.length === 0) throw new Error(`no start of ${n} cards has ${structure.name}`);
  return outcomes(n, ...mix).every((came) => starts.every((start) => holds(laidAfter(start, came), start)));
}

const has = (structure: Structure) => (packet: readonly Laid[]) => structure.has(packet, packet);
const EVEN = [6, 8, 10];

const monge = either(['Monge-shuffle the packet.'], ['Monge-shuffle the packet, the second beneath.']);
const GILBREATH = 'Deal any number of cards to the table and riffle the two packets together.';
const sameClass = (packet: readonly Laid[]): boolean => packet.every(({ x }) => x === packet[0].x);
const halves = (packet: readonly Laid[]): [readonly Laid[], readonly Laid[]] => [
  packet.slice(0, packet.length / 2),
  packet.slice(packet.length / 2),
];

describe('alternating', () => {
  test('contains mirrored opposites and opposites in pairs when even', () => {
    for (const n of EVEN)
      for (const start of alternating.starts(n))
        expect([has(mirroredOpposites)(start), has(oppositesInPairs)(start)]).toEqual([true, true]);
  });
  test('cut, deal any number, riffle: opposites in pairs', () => {
    for (const n of [4, 6, 8])
      expect(always(n, alternating, ['Cut the packet.', GILBREATH], has(oppositesInPairs))).toBe(true);
  });
  test('cut so that the two bottom cards differ, riffle: opposites in pairs; if they agree, one card moved restores it', () => {
    for (const n of EVEN) {
      for (let c = 1; c < n; c++) {
        const mix = [`Cut the packet at ${c} and riffle the halves together.`];
        // The bottom cards of the two parts were at places c and n.
        const differ = (n - c) % 2 === 1;
        const last = differ ? [] : ['Transfer 1 card from top to bottom.'];
        expect(always(n, alternating, [...mix, ...last], has(oppositesInPairs))).toBe(true);
        expect(always(n, alternating, mix, has(oppositesInPairs))).toBe(differ);
      }
    }
  });
  test('milk: opposites in pairs when even, equal top-and-bottom pairs when odd', () => {
    for (const n of EVEN)
      expect(always(n, alternating, ['Milk the packet.'], has(oppositesInPairs))).toBe(true);
    // The single card of an odd packet lies on top, the pairs beneath it.
    const equalPairs = (packet: readonly Laid[]): boolean =>
      packet.every(({ x }, i) => i === 0 || i % 2 === 1 || x === packet[i - 1].x);
    for (const n of [5, 7, 9]) expect(always(n, alternating, ['Milk the packet.'], equalPairs)).toBe(true);
  });
  test.each([
    ['two heaps', ['Deal the packet into 2 piles.', 'Gather the piles in any order.']],
    ['stripped out', ['Anti-faro the packet.']],
    ['down-under', ['Deal the packet down-under into a pile.']],
    ['under-down', ['Deal the packet under-down into a pile.']],
    ['Monge', [monge]],
  ])('%s: one class in each half', (_name, mix) => {
    for (const n of EVEN) {
      const apart = (packet: readonly Laid[]): boolean => halves(packet).every(sameClass);
      expect(always(n, alternating, mix, apart)).toBe(true);
    }
  });
  test('out-faro: pairs of opposites for n = 2 mod 4, runs of two equal for n = 0 mod 4', () => {
    const equals = (packet: readonly Laid[]): boolean => packet.every(({ x }, i) => x === packet[i ^ 1].x);
    for (const n of [6, 10])
      expect(always(n, alternating, ['Out-faro the packet.'], has(oppositesInPairs))).toBe(true);
    for (const n of [4, 8, 12]) expect(always(n, alternating, ['Out-faro the packet.'], equals)).toBe(true);
  });
});

describe('mirrored, half-offset and adjacent', () => {
  test.each([
    ['milk', mirroredMates, ['Milk the packet.'], adjacentMates],
    ['milk', mirroredOpposites, ['Milk the packet.'], oppositesInPairs],
    ['Monge', adjacentMates, [monge], mirroredMates],
    ['Monge', oppositesInPairs, [monge], mirroredOpposites],
    ['Monge', mirroredMates, [monge], halfOffset],
    ['Monge', mirroredOpposites, [monge], halfOffsetOpposites],
    ['milk', halfOffset, ['Milk the packet.'], mirroredMates],
    ['milk', halfOffsetOpposites, ['Milk the packet.'], mirroredOpposites],
    ['out-faro', halfOffset, ['Out-faro the packet.'], adjacentMates],
    ['in-faro', halfOffset, ['In-faro the packet.'], adjacentMates],
    ['out-faro', halfOffsetOpposites, ['Out-faro the packet.'], oppositesInPairs],
    ['strip out', adjacentMates, ['Anti-faro the packet.'], halfOffset],
    [
      'two heaps',
      adjacentMates,
      ['Deal the packet into 2 piles.', 'Gather the piles in any order.'],
      halfOffset,
    ],
    [
      'two heaps',
      oppositesInPairs,
      ['Deal the packet into 2 piles.', 'Gather the piles in any order.'],
      halfOffsetOpposites,
    ],
  ] as const)('%s: %o', (_name, from, mix, to) => {
    for (const n of EVEN) expect(always(n, from, mix, has(to))).toBe(true);
  });
  test('counting or turning over exactly half makes mirrored half-offset, and back after any cut', () => {
    for (const n of EVEN) {
      const count = `Count ${n / 2} cards to the table and drop the rest on top.`;
      expect(always(n, mirroredMates, [count], has(halfOffset))).toBe(true);
      expect(always(n, mirroredMates, [`Turn over the top ${n / 2} cards.`], has(halfOffset))).toBe(true);
      expect(always(n, halfOffset, ['Cut the packet.', count], has(mirroredMates))).toBe(true);
    }
  });
  test('a riffle after a cut in the middle, or of half-offset after any cut and count: each half holds one of every pair', () => {
    const oneEach = (packet: readonly Laid[]): boolean =>
      halves(packet).every((half) => new Set(half.map(({ x }) => x)).size === half.length);
    for (const n of [4, 6, 8]) {
      const exact = `Cut the packet at ${n / 2} and riffle the halves together.`;
      expect(always(n, mirroredMates, [exact], oneEach)).toBe(true);
      const inexact = `Cut the packet at ${n / 2 - 1} and riffle the halves together.`;
      expect(always(n, mirroredMates, [inexact], oneEach)).toBe(false);
      expect(always(n, halfOffset, ['Cut the packet.', GILBREATH], oneEach)).toBe(true);
    }
  });
});

describe('periods', () => {
  const heaps = (n: number, k: number): number[][] => {
    const [{ moment }] = exits(n, `Deal the packet into ${k} piles.`);
    return cards(k).map((p) => packetOf(moment.table, `pile ${p}`).map(({ from }) => from));
  };
  const oneClassEach = (structure: Structure, n: number, k: number): boolean =>
    structure
      .starts(n)
      .every((start) => heaps(n, k).every((heap) => sameClass(heap.map((p) => start[p - 1]))));
  test('exact period k, dealt into k heaps: one class in each', () => {
    for (const [n, k] of [
      [6, 2],
      [6, 3],
      [8, 4],
      [12, 4],
    ])
      expect(oneClassEach(exactPeriod(k), n, k)).toBe(true);
  });
  test('block form does not separate', () => {
    expect(oneClassEach(blockForm(4), 8, 4)).toBe(false);
    expect(oneClassEach(blockForm(3), 6, 3)).toBe(false);
  });
  test('exact period, deal any number and riffle: block form', () => {
    for (const [n, k] of [
      [6, 2],
      [6, 3],
      [8, 4],
      [8, 2],
      [9, 3],
    ])
      expect(always(n, exactPeriod(k), [GILBREATH], has(blockForm(k)))).toBe(true);
  });
});

describe('faces and classes', () => {
  const TURN_SECOND = 'Deal the packet into a pile, turning every second card.';
  test('face-class parity and class shown by face change into each other when every second card is turned', () => {
    for (const n of [6, 8]) {
      expect(always(n, faceClassParity, [TURN_SECOND], has(classByFace))).toBe(true);
      expect(always(n, classByFace, [TURN_SECOND], has(faceClassParity))).toBe(true);
      expect(always(n, faceClassParity, ['Turn every second card over in place.'], has(classByFace))).toBe(
        true,
      );
    }
  });
  test('snake layout folded line by line: class shown by face', () => {
    const lay = (rows: number, columns: number): string =>
      `Lay out the packet in ${rows} rows of ${columns}, rows alternately.`;
    const fold = (from: string, to: string): string => `Turn cell ${from} over onto cell ${to}.`;
    const up = 'Put cell 2 2 on the packet.';
    const two = either(
      [fold('1 1', '2 1'), fold('1 2', '2 2'), fold('2 1', '2 2')],
      [fold('1 1', '1 2'), fold('2 1', '2 2'), fold('1 2', '2 2')],
    );
    expect(always(4, faceClassParity, [lay(2, 2), two, up], has(classByFace))).toBe(true);
    const six = either(
      [fold('1 1', '2 1'), fold('1 2', '2 2'), fold('1 3', '2 3'), fold('2 1', '2 2'), fold('2 3', '2 2')],
      [fold('1 1', '1 2'), fold('2 1', '2 2'), fold('1 3', '1 2'), fold('2 3', '2 2'), fold('1 2', '2 2')],
    );
    expect(always(6, faceClassParity, [lay(2, 3), six, up], has(classByFace))).toBe(true);
    // A diagonal move spoils it.
    const diagonal = [fold('1 1', '2 2'), fold('1 2', '2 2'), fold('2 1', '2 2')];
    expect(always(4, faceClassParity, [lay(2, 2), ...diagonal, up], has(classByFace))).toBe(false);
  });
  test('the faces of a pair agree exactly when the classes differ', () => {
    for (const start of faceClassParity.starts(8))
      for (let i = 0; i < 8; i += 2)
        expect(start[i].up === start[i + 1].up).toBe(start[i].x !== start[i + 1].x);
  });
  test('with equal classes as many of one face up as of the other', () => {
    const equal = faceClassParity.starts(8).filter((start) => start.filter(({ x }) => x === 1).length === 4);
    for (const start of equal) {
      const up = (x: number): number => start.filter((card) => card.up === 1 && card.x === x).length;
      expect(up(0)).toBe(up(1));
    }
  });
  test('all face down and every second card turned: exactly half face up', () => {
    for (const n of EVEN) {
      const [packet] = outcomes(n, TURN_SECOND);
      expect(packet.filter(({ up }) => up === 1)).toHaveLength(n / 2);
    }
  });
});

test('two packets in opposite order: after transfers of n - 1 in all the tops are mates', () => {
  const n = 6;
  const table = `left: ${cards(n).join(' ')}; right: ${cards(n).reverse().join(' ')}`;
  for (let c = 0; c < n; c++) {
    const ends = exitsFrom(
      table,
      `Transfer ${c} cards from top to bottom of the left.`,
      `Transfer ${n - 1 - c} cards from top to bottom of the right.`,
    );
    const tops = ends.map(({ moment }) =>
      ['left', 'right'].map((pile) => packetOf(moment.table, pile)[0].from),
    );
    // The right packet holds cards n + 1 to 2n of the table, card n + k being the mate of card n + 1 - k.
    for (const [left, right] of tops) expect(left + right).toBe(2 * n + 1);
  }
});

test('sums of mates travel with the mates: mirrored, one half turned over, half-offset', () => {
  const n = 8;
  const [came] = outcomes(n, `Turn over the top ${n / 2} cards.`);
  for (const low of words(n / 2, 4)) {
    const values = [...low, ...low.toReversed().map((v) => 14 - v)];
    const after = came.map(({ from }) => values[from - 1]);
    for (let p = 0; p < n / 2; p++) expect(after[p] + after[p + n / 2]).toBe(14);
  }
});

describe('cyclic stacks', () => {
  test('counting through turns the step d into -d', () => {
    for (const n of [6, 7, 8])
      expect(
        always(n, cyclicStack, ['Deal the packet into a pile.'], (packet, start) => {
          return ((stepOf(packet) ?? 0) + (stepOf(start) ?? 0)) % n === 0 && stepOf(packet) !== null;
        }),
      ).toBe(true);
  });
  test.each([
    [8, 3],
    [10, 3],
    [13, 4],
    [13, 5],
  ])('%i cards in %i heaps, gathered by skips: step -k d', (n, k) => {
    expect(
      always(
        n,
        cyclicStack,
        [`Deal the packet into ${k} piles.`, 'Gather the piles by skips.'],
        (packet, start) => {
          const step = stepOf(packet);
          return step !== null && (step + k * (stepOf(start) ?? 0)) % n === 0;
        },
      ),
    ).toBe(true);
  });
});
