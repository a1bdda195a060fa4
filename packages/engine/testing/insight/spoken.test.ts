import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { spokenIn, type Spoken } from '../../src/insight/conditions/spoken.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';

const LIMITS = { work: 4_000_000, states: 100_000, trials: 0, seed: 1 };
const NOTES = join(import.meta.dirname, '../../../../notes');

function spoken(text: string): Spoken[] {
  const { routine, outline, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  return spokenIn(routine, outline, LIMITS);
}

const buried = (sentence: string, patter: string): string => `## Set-up

- packet: A-4 of hearts torn in half and stacked, face down

## Working

1. Cut the packet.
2. ${sentence}
${patter}
## Ending

- The top card and the bottom card are the two halves of one card.
`;

describe('what the ending rests on and has to be said', () => {
  const line = '"Anywhere in the middle, not on top and not right to the bottom."';

  test('is bound to the line that says it', () => {
    expect(spoken(buried('Bury the top 3 cards in the middle.', `\n   > ${line}\n`))).toEqual([
      { step: '2', words: 'not back on top', line },
      { step: '2', words: 'not right to the bottom', line },
    ]);
  });

  test('is missed when the line is dropped', () => {
    expect(spoken(buried('Bury the top 3 cards in the middle.', '')).map(({ line: said }) => said)).toEqual([
      null,
      null,
    ]);
  });

  test('is missed one by one', () => {
    const half = '"Only not right to the bottom."';
    expect(spoken(buried('Bury the top 3 cards in the middle.', `\n   > ${half}\n`))).toEqual([
      { step: '2', words: 'not back on top', line: null },
      { step: '2', words: 'not right to the bottom', line: half },
    ]);
  });
});

test('a bound that the ending does not need need not be said', () => {
  const text = (patter: string): string =>
    `## Set-up\n\n- packet: 6 cards alternately red and black, face down\n\n## Working\n\n1. Cut the packet at 1 to 5.\n${patter}\n## Ending\n\n- The colours alternate.\n`;
  expect(spoken(text(''))).toEqual([]);
  expect(spoken(text('\n   > "At most five."\n'))).toEqual([]);
});

test('lines beside a block are said of the steps in it, and rounds have bounds too', () => {
  const text = `## Set-up

- packet: 4 cards, face down

## Working

1. At least once:
   1. Turn over the top 2 to 4 cards.

   > "At least two of them."

## Ending

- An even number of cards are face up or an odd number of cards are face up.
`;
  expect(spoken(text)).toEqual([]);
  const once = `## Set-up

- packet: 4 cards, face down

## Working

1. At least 2 times:
   1. Deal 1 card to the table.
   2. Put the table on the packet.
2. Cut off at least 2 cards to the table.

   > "Two at least."

## Ending

- The table has at least 2 cards.
`;
  expect(spoken(once)).toEqual([{ step: '2', words: 'at least 2', line: '"Two at least."' }]);
});

// A long test for what is in every note: whatever a proved ending rests on is in the patter beside it.
test.each(readdirSync(NOTES).filter((file) => file.endsWith('.md') && file !== 'README.md'))(
  '%s says what it rests on',
  (file) => {
    const text = readFileSync(join(NOTES, file), 'utf8');
    if (!/^expect: (proved|\[proved)/m.test(text)) return;
    expect(spoken(text).filter(({ line }) => line === null)).toEqual([]);
  },
);
