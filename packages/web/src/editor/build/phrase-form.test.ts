import { CLAIMS, compile, MOVES, read } from '@foregone/engine';
import { describe, expect, test } from 'vitest';
import { SAMPLES, type Part } from '../code/snippets.ts';
import { AMOUNT_WAYS, amountText, readAmount, writeAmount } from './amounts.ts';
import { fieldsOf, firstWording, repeated, REPEATS, sentenceOf } from './phrase-form.ts';

const noteWith = (step: string, ending: string) => `## Set-up
- packet: full pack in any order, face down

## Working
1. The spectator names a number from 1 to 3, call it M.
2. The spectator notes the top card, call it chosen.
3. Deal 12 cards into 2 piles.
4. ${step}

## Ending
- ${ending}
`;

const errors = (text: string) =>
  compile(read(text))
    .diagnostics.filter(({ severity }) => severity === 'error')
    .map(({ code, range }) => `${code}: ${text.slice(range.from, range.to)}`);

const cut = MOVES.find(({ id }) => id === 'cut')!.phrases[0]!.parts;

describe('a sentence from controls', () => {
  test.each(MOVES.map((move) => [move.title, move] as const))(
    '%s is understood as it is offered',
    (_, move) => {
      expect(errors(noteWith(sentenceOf(move.phrases[0]!.parts, {}), 'Every card is face down.'))).toEqual(
        [],
      );
    },
  );

  test.each(CLAIMS.map((claim) => [claim.title, claim] as const))(
    '%s is understood as it is offered',
    (_, claim) => {
      expect(
        errors(
          noteWith(
            'Cut the packet.',
            sentenceOf(claim.phrases[firstWording(claim.phrases, true)]!.parts, {}),
          ),
        ),
      ).toEqual([]);
    },
  );

  test('there is something to begin with for every kind of blank', () => {
    const types = new Set<string>();
    const walk = (parts: readonly Part[]) => {
      for (const part of parts) {
        if (part.part === 'blank') types.add(part.type);
        if (part.part === 'optional' || part.part === 'either') part.ways.forEach(walk);
      }
    };
    for (const { phrases } of [...MOVES, ...CLAIMS]) for (const { parts } of phrases) walk(parts);
    expect([...types].filter((type) => SAMPLES[type] === undefined)).toEqual([]);
  });

  test('what is filled in stands in the sentence', () => {
    expect(sentenceOf(cut, {})).toBe('Cut the packet.');
    expect(sentenceOf(cut, { pile: 'pile 1' })).toBe('Cut pile 1.');
    const add = fieldsOf(cut, {}).find(({ control }) => control === 'add')!;
    expect(fieldsOf(cut, {}).map(({ control }) => control)).toEqual(['pile', 'add']);
    const filled = { [add.key]: 'yes', at: writeAmount({ way: 'even', n: 2, to: 4, end: 'top' }) };
    expect(sentenceOf(cut, filled)).toBe('Cut the packet at an even number.');
    expect(fieldsOf(cut, filled).map(({ control }) => control)).toEqual(['pile', 'add', 'amount']);
  });

  test.each(REPEATS)('%s is understood in front of a step', (often) => {
    expect(errors(noteWith(repeated('Cut the packet.', often), 'Every card is face down.'))).toEqual([]);
  });

  test.each(AMOUNT_WAYS)('%s is understood in a sentence about so many cards', (way) => {
    const at = writeAmount({ way, n: 3, to: 5, end: 'top' });
    expect(readAmount(at)).toEqual({ way, n: 3, to: 5, end: 'top' });
    for (const sentence of [
      `Cut the packet at ${amountText('amount', at)}.`,
      `Deal ${amountText('cards', at)} to the table.`,
      `Turn over ${amountText('block', at)}.`,
      `Deal the packet into ${amountText('many', at)} heaps.`,
    ]) {
      expect(errors(noteWith(sentence, 'Every card is face down.'))).toEqual([]);
    }
    if (way === 'any') return;
    const claim = `${amountText('howmany', at)} cards are face up.`;
    expect(errors(noteWith('Cut the packet.', claim))).toEqual([]);
  });
});
