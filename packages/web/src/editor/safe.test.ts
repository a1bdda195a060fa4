import { check, type FreedomRowData } from '@foregone/engine';
import { describe, expect, test } from 'vitest';
import { breakersOf, firstSafe, putIn, safePlaceOf, sentenceFor, sorted, withoutEach } from './safe.ts';
import { applied } from './steps.ts';

const noteWith = (...working: readonly string[]) => `## Set-up
- packet: 10 cards alternately face up and face down

## Working
${working.join('\n')}

## Ending
- Exactly 5 cards are face up.
`;
const BLOCK = ['1. Any number of times:', '   1. Cut the packet.', '   2. Turn over the top 3 together.'];

const breakers = (text: string) =>
  breakersOf(
    text,
    withoutEach(text).map((one) => check(one.text).report.verdict),
  );
const row = (part: Partial<FreedomRowData>): FreedomRowData => ({
  text: 'Cut.',
  hands: 'cut',
  status: 'safe',
  words: '',
  choices: null,
  ...part,
});

describe('the step that breaks a note', () => {
  test.each([
    [noteWith('1. Cut the packet.', '2. Turn over the top card.'), ['2']],
    [noteWith('1. Cut the packet.', '2. Turn over the top card.', '3. Milk the packet.'), ['2']],
    [noteWith(...BLOCK), ['1.2']],
    [noteWith(...BLOCK.map((line) => line.replace('3', '2')), '2. Turn over the top card.'), ['2']],
    [noteWith('1. Turn over the top card.', '2. Turn over the 3rd card.'), []],
  ])('%#', (text, numbers) => {
    expect(check(text).report.verdict).toBe('refuted');
    expect(breakers(text)).toEqual(numbers);
  });
});

describe('where something else is safe', () => {
  const text = noteWith('1. Cut the packet.', '2. Turn over the top card.', '3. Milk the packet.');

  test('before the step at the caret of a note that always works', () => {
    expect(safePlaceOf(text, '2', 'proved', [])).toEqual({ text, place: '2', step: '2', isInstead: false });
    expect(safePlaceOf(text, undefined, 'proved', [])).toMatchObject({ place: 'end' });
  });

  test('in place of the step that breaks it', () => {
    const found = safePlaceOf(text, undefined, 'refuted', ['2'])!;
    expect(found).toMatchObject({ place: '2', step: '2', isInstead: true });
    expect(found.text).toBe(noteWith('1. Cut the packet.', '2. Milk the packet.'));
    expect(safePlaceOf(found.text, '2', 'refuted', ['2'])).toMatchObject({ place: 'end' });
    expect(safePlaceOf(noteWith(...BLOCK), '1.1', 'refuted', ['1.2'])).toMatchObject({
      place: 'end of 1',
      step: '1.2',
    });
    const change = putIn(text, found, 'Turn the packet over.')!;
    expect(applied(text, change)).toBe(text.replace('Turn over the top card.', 'Turn the packet over.'));
  });

  test('nowhere, while nothing is known', () => {
    expect(safePlaceOf(text, '1', 'undecided', [])).toBeUndefined();
    expect(safePlaceOf(text, '1', 'refuted', [])).toBeUndefined();
  });
});

describe('rows', () => {
  const some = row({
    text: 'Cut anywhere.',
    status: 'some',
    choices: {
      safe: 4,
      of: 8,
      words: 'even numbers only',
      first: false,
      together: true,
      choices: [],
      narrowed: 'Cut at an even number.',
    },
  });
  const unsafe = row({ text: 'Riffle.', hands: 'mix', status: 'unsafe' });

  test('put in what is safe of them', () => {
    expect([row({}), some, unsafe].map(sentenceFor)).toEqual(['Cut.', 'Cut at an even number.', '']);
    expect(firstSafe([unsafe, some, row({})])?.text).toBe('Cut.');
    expect(firstSafe([row({ text: 'Cut it anywhere.' }), row({})])?.text).toBe('Cut.');
    expect(firstSafe([unsafe, some])?.text).toBe('Cut anywhere.');
    expect(firstSafe([unsafe])).toBeUndefined();
  });

  test('stand by what hands do, those that are always safe first', () => {
    const { safe, others } = sorted([some, row({}), unsafe]);
    expect(safe.map(([hands, rows]) => [hands, rows.map(({ text }) => text)])).toEqual([
      ['cut', ['Cut.', 'Cut anywhere.']],
    ]);
    expect(others).toEqual([['mix', [unsafe]]]);
  });
});
