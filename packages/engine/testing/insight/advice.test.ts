import { expect, test } from 'vitest';
import { advice, check } from '../../src/check.ts';

const noteOf = (setUp: string, working: string, ...endings: readonly string[]): string =>
  `## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${working}\n\n## Ending\n\n${endings.map((one) => `- ${one}\n`).join('')}`;

const adviceOn = (text: string) => advice(check(text));

test('each refuted sentence is told when it works, a proved one is not', () => {
  const text = noteOf(
    '6 cards alternately red and black, face down',
    '1. Cut the packet.',
    'The top card is red.',
    'The colours alternate.',
  );
  expect(adviceOn(text)?.conditions).toEqual([
    ['Works when the number at step 1 is even: "Cut the packet at an even number."'],
    [],
  ]);
});

test('another number of cards may be what is wanting', () => {
  const text = noteOf(
    '9 cards alternately red and black, face down',
    '1. Any number of times: cut the packet.',
    'The colours alternate.',
  );
  expect(adviceOn(text)?.conditions).toEqual([
    ['Works with another number of cards, of those from 2 to 17: even numbers.'],
  ]);
});

test('nothing is said of what nothing saves, and of what was not understood', () => {
  const text = noteOf('6 cards, face down', '1. Cut the packet.', 'All cards are face up.');
  expect(adviceOn(text)?.conditions).toEqual([[]]);
  expect(adviceOn(noteOf('6 cards, face down', '1. Juggle.', 'All cards are face up.'))).toBeNull();
});

test('a small allowance is kept to, and what is not found is left out', () => {
  const text = noteOf(
    'clubs hearts spades diamonds repeated, 24 cards, face down',
    '1. Riffle the packet.\n2. Riffle the packet.\n3. Deal any number of cards to the table and riffle the two packets together.',
    'Every four has one of each suit.',
  );
  let asked = 0;
  const found = advice(check(text), {
    work: 100_000,
    states: 1000,
    trials: 0,
    seed: 1,
    goOn: (spent) => {
      asked = Math.max(asked, spent);
      return true;
    },
  });
  expect(found?.conditions).toEqual([[]]);
  expect(asked).toBeLessThan(110_000);
});

test('what has to be said and is not, in words', () => {
  const text = noteOf(
    '6 cards alternately red and black, face down',
    '1. Cut the packet at an even number.',
    'The top card is red.',
  );
  expect(adviceOn(text)?.unsaid).toEqual([
    'The ending rests on "an even number" at step 1, and no line of patter beside it says so. Say it there: "But an even number."',
  ]);
  const said = text.replace('even number.', 'even number.\n\n   > "Cut any even number of them."');
  expect(adviceOn(said)?.unsaid).toEqual([]);
  expect(adviceOn(said)?.spoken).toEqual([
    { step: '1', words: 'an even number', line: '"Cut any even number of them."' },
  ]);
});
