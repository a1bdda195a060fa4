import { describe, expect, test } from 'vitest';
import {
  everyOutcome,
  parseTable,
  perform,
  printTable,
  runMove,
  readAs,
  type Table,
} from '../../testing/packets.ts';
import { cutDeeper } from './cut-deeper.ts';
import { cutTurn } from './cut-turn.ts';
import { dealTurning } from './deal-turning.ts';
import { fold } from './fold.ts';
import { handAcross } from './hand-across.ts';
import { leaveOrTurn } from './leave-or-turn.ts';
import { rotatePacket } from './rotate-packet.ts';
import { turnAlternate } from './turn-alternate.ts';
import { turnPacket } from './turn-packet.ts';
import type { Move } from './move.ts';

const packet = (n: number) => Array.from({ length: n }, (_, i) => i + 1).join(' ');

/** Everything that a sentence, said any number of times, can lead to. */
function closure(move: Move, sentence: string, before: string): Set<string> {
  const found = new Set([before]);
  for (const table of found) for (const after of everyOutcome(move, sentence, table)) found.add(after);
  return found;
}

/** f + x + p for every place, x being the parity of the card's name: constant where class, face and place are tied. */
function tied(table: string): boolean {
  const sums = table.split(' ').map((card, p) => (parseInt(card, 10) + p + (card.includes('^') ? 1 : 0)) % 2);
  return new Set(sums).size === 1;
}

test.each([
  [2, 2 * 2],
  [4, 2 * 24],
  [6, 2 * 720],
])('cut and turn over two, %i cards all face down, reaches 2 n! states', (n, states) => {
  expect(closure(cutTurn, 'Cut and turn over two.', packet(n)).size).toBe(states);
});

test('the turnover principle: an even block keeps class, face and place tied, an odd one does not', () => {
  const even = closure(cutTurn, 'Cut and turn over two.', packet(4));
  expect([...even].every(tied)).toBe(true);
  const odd = closure(cutTurn, 'Cut the packet and turn over the top 3 cards.', packet(4));
  expect([...odd].every(tied)).toBe(false);
});

describe('leave or turn', () => {
  const outcomes = (sentence: string, n: number) => [...everyOutcome(leaveOrTurn, sentence, packet(n))];

  test('even blocks keep class, face and place tied', () => {
    const sentence =
      'Take an even number of cards at a time off the packet, leaving or turning each, and lay each on top or beneath.';
    const after = outcomes(sentence, 6);
    expect(after.every(tied)).toBe(true);
    expect(after.length).toBeGreaterThan(30);
  });

  test('pairs on top: each left or turned, so 2 to the number of pairs', () => {
    expect(outcomes('Take pairs off the packet, leaving or turning each.', 8)).toHaveLength(16);
  });

  test('a swapped pair or an odd block breaks the tie', () => {
    expect(outcomes('Take pairs off the packet, leaving or swapping each.', 6).every(tied)).toBe(false);
    expect(outcomes('Take blocks of 3 off the packet, leaving or turning each.', 6).every(tied)).toBe(false);
  });

  test('a single card left over goes on top as it is', () => {
    expect(outcomes('Take pairs off the packet, turning each.', 5)).toEqual(['5 4^ 3^ 2^ 1^']);
  });
});

test('cut deeper: the first face-down card is the old top card, whatever was turned', () => {
  const after = everyOutcome(cutDeeper, 'Cut deeper.', packet(7));
  expect(after.size).toBeGreaterThan(15);
  for (const table of after) expect(table.split(' ').find((card) => !card.includes('^'))).toBe('1');
});

test('dealing and pushing off, every second card turned, differ by the order alone', () => {
  const dealt = perform(
    dealTurning,
    'Deal the packet into a pile, turning every second card.',
    packet(7),
    [],
  );
  const pushed = perform(turnAlternate, 'Turn every second card over in place.', packet(7), []);
  expect(printTable(dealt.table).split(' ').reverse()).toEqual(printTable(pushed.table).split(' '));
});

test('the two conventions differ by turning every card', () => {
  const [args] = readAs(turnAlternate, 'Turn every second card over in place.');
  const second = runMove(turnAlternate, args, parseTable(packet(6)), () => 0).table;
  const first = runMove(turnAlternate, { ...args, from: 'first of each' }, second, () => 0).table;
  expect(printTable(first)).toBe('1^ 2^ 3^ 4^ 5^ 6^');
});

test('sideways, then end over end, is half a turn on the table', () => {
  const turn = (how: string, table: Table) =>
    runMove(turnPacket, readAs(turnPacket, `Turn the packet over ${how}.`)[0], table, () => 0).table;
  const both = turn('end over end', turn('sideways', parseTable("1 2^ 3' 4")));
  expect(printTable(both)).toBe(
    printTable(perform(rotatePacket, 'Rotate the packet.', "1 2^ 3' 4", []).table),
  );
});

test('folding a checked 2 by 2 layout: face, home parity and cell parity stay tied', () => {
  // Cells 1 2 / 3 4; cells 1 and 4 are even, 2 and 3 odd.
  const odd = (cell: string) => (cell === '2' || cell === '3' ? 1 : 0);
  const neighbours: readonly (readonly [number, number])[] = [
    [1, 2],
    [1, 3],
    [2, 4],
    [3, 4],
    [2, 1],
    [3, 1],
    [4, 2],
    [4, 3],
  ];
  const found = new Set(['pile 1: 1; pile 2: 2; pile 3: 3; pile 4: 4']);
  for (const table of found)
    for (const [from, onto] of neighbours) {
      // A fold goes onto a heap that is there.
      const piles = parseTable(table).piles;
      if (!piles.has(`pile ${from}`) || !piles.has(`pile ${onto}`)) continue;
      for (const after of everyOutcome(fold, `Turn pile ${from} over onto pile ${onto}.`, table))
        found.add(after);
    }
  expect(found.size).toBeGreaterThan(30);
  for (const table of found)
    for (const [name, cards] of parseTable(table).piles)
      for (const { card, bits } of cards)
        expect((odd(card.name) + odd(name.slice(-1)) + (bits.has('up') ? 1 : 0)) % 2).toBe(0);
});

test('cards handed over from anywhere are any subset, each kept in order', () => {
  const sentence = 'Hand any number of cards from anywhere in the left across to the right.';
  expect(everyOutcome(handAcross, sentence, 'left: 1 2 3 4; right: 5').size).toBe(16);
  const two = everyOutcome(
    handAcross,
    sentence.replace('any number of cards', '2 cards'),
    'left: 1 2 3 4; right: 5',
  );
  expect(two.size).toBe(6);
  expect([...two]).toContain('left: 2 4; right: 1 3 5');
});
