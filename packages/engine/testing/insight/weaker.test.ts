import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contraryTo, weakerThan } from '../../src/insight/slips/weaker.ts';
import type { Ending } from '../../src/routine/routine.ts';
import { claimTable, exitOf } from '../claim-tables.ts';
import { isTrue } from '../claim-truth.ts';
import { claim } from '../naive/write.ts';
import { parseTable, type Table } from '../packets.ts';

const CARDS = ['AC', 'AS', 'AH', '2C', '2H', '2D', 'KS', 'KD'];

const tables: fc.Arbitrary<Table> = fc
  .tuple(
    fc.shuffledSubarray(CARDS, { minLength: 4, maxLength: 6 }),
    fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
  )
  .map(([cards, up]) => parseTable(cards.map((card, i) => `${card}${up[i] ? '^' : ''}`).join(' ')));

function endingOf(text: string): Ending {
  return { text, range: { from: 0, to: 0 }, sentence: claim(text) };
}

function holds({ sentence }: Ending, table: Table): boolean {
  if (sentence.says !== 'claim') throw new Error('a claim was made into something else');
  return isTrue(sentence.claim, sentence.args, table, exitOf(table).start);
}

const SENTENCES = [
  'Every pair agrees in suit.',
  'Every pair is mates.',
  'Every mirror pair agrees in value.',
  'Every mirror pair differs in colour.',
  'Every pair from the bottom differs in parity.',
  'All cards are face up.',
  'All red cards are face down.',
  'Exactly 2 cards are face up.',
  'Exactly 3 red cards are face up.',
  'The top card is the AS.',
  'The bottom card of the packet is the 2D.',
];

test.each(SENTENCES)('%s: whatever makes it true makes all that says less true', (text) => {
  const ending = endingOf(text);
  const cards = exitOf(parseTable(CARDS.join(' '))).cards;
  const less = weakerThan(ending, cards).map((one) => one.ending);
  expect(less.length).toBeGreaterThan(0);
  expect(new Set(less.map((one) => one.text)).size).toBe(less.length);
  let met = 0;
  fc.assert(
    fc.property(tables, (table) => {
      if (!holds(ending, table)) return;
      met++;
      for (const one of less) expect(`${one.text} ${holds(one, table)}`).toBe(`${one.text} true`);
    }),
    { numRuns: 3_000, seed: 5 },
  );
  expect(met).toBeGreaterThan(5);
});

test('what says less, in the order in which it does', () => {
  const cards = exitOf(claimTable('AS 2H')).cards;
  const told = (text: string): string[] => weakerThan(endingOf(text), cards).map((one) => one.ending.text);
  expect(told('The top card is the AS.')).toEqual([
    'The top card is an ace',
    'The top card is a spade',
    'The top card is black',
  ]);
  expect(told('Exactly 3 cards are face up.')).toEqual(['An odd number of cards are face up']);
});

test('no sentence is true together with its contrary', () => {
  for (const text of ['Exactly 2 cards are face up.', 'The top card and the bottom card agree in colour.']) {
    const ending = endingOf(text);
    const contrary = contraryTo(ending);
    expect(contrary.length).toBe(1);
    fc.assert(
      fc.property(tables, (table) => {
        expect(holds(ending, table) && holds(contrary[0], table)).toBe(false);
      }),
      { numRuns: 500, seed: 5 },
    );
  }
});
