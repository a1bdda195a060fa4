import { expect, test } from 'vitest';
import { everyOutcome, parseTable, perform, printTable, type Table } from '../../testing/packets.ts';
import { countRing } from './count-ring.ts';
import { cutOff } from './cut-off.ts';
import { dealPiles } from './deal-piles.ts';
import { deal } from './deal.ts';
import { foldLayout } from './fold-layout.ts';
import { gatherWith } from './gather-with.ts';
import type { Key, Move } from './move.ts';
import { nameNumber } from './name-number.ts';
import { nameWord } from './name-word.ts';
import { noteCard } from './note-card.ts';
import { putOn } from './put-on.ts';
import { reckon } from './reckon.ts';
import { sayPile } from './say-pile.ts';
import { transfer } from './transfer.ts';

type Sentence = readonly [move: Move, sentence: string, ...choices: Key[]];

/** Sentences one after another on one table. */
function play(before: string, ...sentences: readonly Sentence[]): Table {
  return sentences.reduce<Table>((table, [move, sentence, ...choices]) => {
    const run = perform(move, sentence, printTable(table), choices);
    if (run.end !== 'done') throw new Error(`${sentence}: ${JSON.stringify(run.end)}`);
    return run.table;
  }, parseTable(before));
}

const packet = (n: number) => Array.from({ length: n }, (_, i) => i + 1).join(' ');

/** 1-based place of the marked card in a pile, and nothing when it is elsewhere. */
function placeOf(table: Table, pile: string, mark = 'chosen'): number {
  return (table.piles.get(pile) ?? []).findIndex(({ bits }) => bits.has(mark)) + 1;
}

test.each([
  [21, 3, 11],
  [27, 3, 14],
])(
  'pile location: %i cards in %i piles, the named pile in the middle each time, end at %i',
  (cards, piles, end) => {
    const round: readonly Sentence[] = [
      [dealPiles, `Deal the packet into ${piles} piles.`],
      [sayPile, 'The spectator says which pile holds chosen, call its number N.'],
      [gatherWith, 'Gather the piles with pile N in the middle.'],
    ];
    for (let place = 1; place <= cards; place++) {
      const note: Sentence = [noteCard, 'The spectator notes any card, call it chosen.', place];
      const table = play(packet(cards), note, ...round, ...round, ...round);
      expect(placeOf(table, 'packet')).toBe(end);
    }
  },
);

test('two heaps dealt, the named heap on top each time: 3rd of 8', () => {
  const round: readonly Sentence[] = [
    [dealPiles, 'Deal the packet into 2 piles.'],
    [sayPile, 'The spectator says which pile holds chosen, call its number N.'],
    [gatherWith, 'Gather the piles with pile N on top.'],
  ];
  for (let place = 1; place <= 8; place++) {
    const note: Sentence = [noteCard, 'The spectator notes any card, call it chosen.', place];
    expect(placeOf(play(packet(8), note, ...round, ...round, ...round), 'packet')).toBe(3);
  }
});

test('automatic placement: k removed, m counted while the k-th is noted, all back: the card ends at m + 1', () => {
  const m = 6;
  for (let k = 1; k <= m; k++) {
    const table = play(
      packet(12),
      [cutOff, 'Cut off any number of cards to the pocket, call it K.', k],
      // The k-th card counted off is the k-th from the top before the count.
      [noteCard, 'The spectator notes the Kth card, call it chosen.'],
      [deal, `Deal ${m} cards to the table.`],
      [putOn, 'Put the table on the packet.'],
      [putOn, 'Put the pocket on the packet.'],
    );
    expect(placeOf(table, 'packet')).toBe(m + 1);
  }
});

test('k moved from top to bottom, m counted off: old card m + 1 lies k-th in the heap', () => {
  const m = 5;
  for (let k = 1; k <= m; k++) {
    const table = play(
      `${packet(m)} ${m + 1}(chosen) ${[7, 8, 9, 10].join(' ')}`,
      [transfer, 'Transfer any number of cards from the top to the bottom, call it K.', k],
      [deal, `Deal ${m} cards to the table.`],
    );
    expect(placeOf(table, 'table')).toBe(k);
  }
});

test.each([
  [1, 5],
  [2, 6],
  [3, 8],
])(
  'tail of %i and ring of %i: every count ends as many places before the joint as the tail has cards',
  (tail, ring) => {
    for (let n = tail + 1; n <= 30; n++) {
      const names = Array.from({ length: tail + ring }, (_, i) => i + 1);
      const before = `n = ${n}; tail: ${names.slice(0, tail).join(' ')}; ring: ${names.slice(tail).join(' ')}`;
      const sentence =
        'Count N from the foot of the tail into the ring and back round the ring, call the card reached chosen.';
      const { table } = perform(countRing, sentence, before, []);
      expect(placeOf(table, 'ring')).toBe((((-tail % ring) + ring) % ring) + 1);
    }
  },
);

test('a count that does not leave the tail is stuck', () => {
  const sentence =
    'Count 2 from the foot of the tail into the ring and back round the ring, call the card reached chosen.';
  expect([...everyOutcome(countRing, sentence, 'tail: 1 2; ring: 3 4')]).toEqual(['stuck']);
});

test.each([
  [10, 19, 9],
  [20, 29, 18],
])('a number from %i to %i less its digits is %i', (from, to, rest) => {
  for (let n = from; n <= to; n++) {
    const table = play(
      '1',
      [nameNumber, `The spectator names a number from ${from} to ${to}, call it N.`, n],
      [reckon, 'Add up the digits of N, call the sum S.'],
      [reckon, 'Call N minus S M.'],
    );
    expect(table.numbers.m).toBe(rest);
  }
});

test('a number upside down, one that reads as a number, and one below nothing are said', () => {
  expect(nameNumber.check?.({ from: 5, to: 2, kind: 'a number', call: 'm' })).toMatchObject([
    { code: 'no-number-between' },
  ]);
  expect(nameNumber.check?.({ from: 1, to: 2, kind: 'a number', call: 'two' })).toMatchObject([
    { code: 'name-is-a-number' },
  ]);
  expect([...everyOutcome(reckon, 'Call N minus 5 M.', 'n = 3; 1')]).toEqual(['stuck']);
});

test('the number of letters of a named word', () => {
  const sentence = 'The spectator names "lamp", "tea" or "sea wind", call the number of letters N.';
  expect([...everyOutcome(nameWord, sentence, '1')].sort()).toEqual(['n = 3; 1', 'n = 4; 1', 'n = 7; 1']);
});

test.each([
  [2, 2],
  [2, 3],
  [3, 3],
  [2, 4],
])(
  'whole lines of a layout of %i rows of %i folded in any order: face shows row plus column',
  (rows, columns) => {
    const cells: string[] = [];
    const parity = new Map<string, number>();
    for (let r = 1; r <= rows; r++)
      for (let c = 1; c <= columns; c++) {
        const name = String((r - 1) * columns + c);
        parity.set(name, (r + c) % 2);
        cells.push(`cell ${r} ${c}: ${name}`);
      }
    const outcomes = everyOutcome(foldLayout, 'Fold the layout in any order.', cells.join('; '));
    expect(outcomes.size).toBeGreaterThan(3);
    for (const after of outcomes) {
      const laid = parseTable(after).piles.get('packet') ?? [];
      const sums = laid.map(
        ({ card, bits }) => ((parity.get(card.name) as number) + (bits.has('up') ? 1 : 0)) % 2,
      );
      expect(laid).toHaveLength(rows * columns);
      expect(new Set(sums).size).toBe(1);
    }
  },
);
