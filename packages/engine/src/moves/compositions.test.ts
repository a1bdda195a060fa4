import { describe, expect, test } from 'vitest';
import { parseTable, printTable, readAs, runMove, type Table } from '../../testing/packets.ts';
import { MOVES } from './index.ts';

/** Every table a working can lead to, sentence by sentence, all choices taken. */
function tables(before: string, ...sentences: readonly string[]): Table[] {
  let now = [parseTable(before)];
  for (const sentence of sentences) now = now.flatMap((table) => after(table, sentence));
  return now;
}

function after(table: Table, sentence: string): Table[] {
  const names = {
    piles: [...table.piles.keys(), 'table'],
    numbers: Object.keys(table.numbers),
    marks: ['chosen'],
    attributes: {},
    cards: [],
  };
  const [[move, args]] = MOVES.flatMap((one) => readAs(one, sentence, names).map((a) => [one, a] as const));
  const found: Table[] = [];
  const walk = (path: readonly number[]): void => {
    const run = runMove(move, args, table, (_options, moment) => path[moment] ?? 0);
    if (run.end !== 'done') throw new Error(`${sentence}: ${JSON.stringify(run.end)}`);
    if (path.length <= run.moments.length) found.push(run.table);
    // Each later moment opened once by its other options, on top of the path that led there.
    run.moments.forEach(({ options }, i) => {
      if (i < path.length) return;
      const led = [...path, ...Array<number>(i - path.length).fill(0)];
      for (let option = 1; option < options.length; option++) walk([...led, option]);
    });
  };
  walk([]);
  return found;
}

/** 1 for the top card. */
function placeOf(name: string, pile: string, table: Table): number {
  return (table.piles.get(pile) ?? []).findIndex(({ card }) => card.name === name) + 1;
}

test('all choices of a riffle are walked', () => {
  const found = tables('1 2 3 4', 'Riffle the packet.').map(printTable);
  expect(new Set(found).size).toBe(2 ** 4 - 4);
});

describe('numbers thought of', () => {
  // Common practice, no source: the noted card comes to place m + 1 whatever the number.
  test('a secret number removed, a card noted at it, the number put back on top', () => {
    const found = tables(
      '1 2 3 4 5 6 7 8 9 10 11 12',
      'Push off 1 to 5 cards to the pocket, call it K.',
      'Count off 6 cards, noting the Kth card, call it chosen, and put them back on top.',
      'Put the pocket on the packet.',
    );
    expect(found).toHaveLength(5);
    for (const table of found) {
      const at = (table.piles.get('packet') ?? []).findIndex(({ bits }) => bits.has('chosen')) + 1;
      expect(at).toBe(7);
    }
  });

  test('a number moved from top to bottom, then m counted off: old card m + 1 lies at that number', () => {
    const found = tables(
      '1 2 3 4 5 6 7 8 9 10 11 12',
      'Transfer 1 to 6 cards from the top to the bottom, call it K.',
      'Deal 6 cards to the table.',
    );
    expect(found.map((table) => placeOf('7', 'table', table))).toEqual(found.map(({ numbers }) => numbers.k));
    expect(found).toHaveLength(6);
  });
});

test('one to three taken in turn, answered to four: of 4q + 1 cards the last is left', () => {
  const found = tables(
    '1 2 3 4 5 6 7 8 9',
    'Push off 1 to 3 cards, call it X.',
    'Call 4 minus X Y.',
    'Push off Y cards.',
    'Push off 1 to 3 cards, call it X.',
    'Call 4 minus X Y.',
    'Push off Y cards.',
  );
  expect(found).toHaveLength(9);
  for (const table of found) expect(table.piles.get('packet')?.map(({ card }) => card.name)).toEqual(['9']);
});

test('hands gathered and dealt again: a hand comes out spread one to each hand', () => {
  const found = tables(
    '1 2 3 4 5 6 7 8 9',
    'Deal the packet into 3 hands.',
    'Gather the hands left on right.',
    'Deal the packet into 3 hands.',
  );
  for (const table of found) {
    const hand = [1, 2, 3].map((n) =>
      (table.piles.get(`hand ${n}`) ?? []).map(({ card }) => Number(card.name) % 3),
    );
    for (const classes of hand) expect(new Set(classes).size).toBe(3);
  }
  expect(found).toHaveLength(1);
});

test('rows and columns crossed out: one of each row and each column is taken', () => {
  const found = tables(
    '1 2 3 4 5 6 7 8 9',
    'Lay out the packet in 3 rows of 3.',
    'Take any card of the layout and discard its row and column.',
    'Take any card of the layout and discard its row and column.',
    'Take any card of the layout and discard its row and column.',
  );
  expect(found).toHaveLength(36);
  for (const table of found) {
    const taken = (table.piles.get('table') ?? []).map(({ card }) => Number(card.name) - 1);
    expect(new Set(taken.map((n) => Math.floor(n / 3))).size).toBe(3);
    expect(new Set(taken.map((n) => n % 3)).size).toBe(3);
  }
});

test('a snake layout folded up in any order: faces tell the colour of the squares', () => {
  const found = tables(
    '1 2 3 4 5 6',
    'Lay out the packet in 2 rows of 3, rows alternately.',
    'Fold up the layout.',
  );
  expect(found.length).toBeGreaterThan(4);
  for (const table of found) {
    const up = (table.piles.get('packet') ?? []).filter(({ bits }) => bits.has('up'));
    expect(new Set(up.map(({ card }) => Number(card.name) % 2)).size).toBe(1);
    expect(up).toHaveLength(3);
  }
});
