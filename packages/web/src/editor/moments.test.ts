import { describe, expect, test } from 'vitest';
import { answer } from '../worker/answer.ts';
import { freeWords } from './code/understood.ts';
import { marginOf, tableBefore } from './moments.ts';
import { picturesOf } from '../ui/picture.ts';

const NOTE = `## Set-up
- packet: 8 cards alternately red and black, face down

## Working
1. Cut the packet.
2. Any number of times: turn over the top 2 together.

## Ending
- Exactly 4 cards are red.
- Every pair has one of each colour.
`;

const ask = <Name extends 'read' | 'play' | 'moments'>(name: Name, about = '') =>
  answer(
    name,
    NOTE,
    { time: 20_000 },
    () => performance.now(),
    () => {},
    about,
  );

describe('what stands beside the steps', () => {
  const reading = ask('read');
  const play = ask('play', '0');
  const moments = ask('moments');
  const margin = marginOf(reading.understood, play, moments.ok ? moments.value : undefined);

  test('every sentence is understood, with its place', () => {
    const words = reading.understood.map(({ kind, range }) => `${kind}: ${NOTE.slice(range.from, range.to)}`);
    expect(words).toContain('step: Cut the packet');
    expect(words.filter((one) => one.startsWith('ending'))).toHaveLength(2);
    expect(words[0]).toBe('set-up: packet: 8 cards alternately red and black, face down');
  });

  test('who chooses, and among how many', () => {
    expect(margin[0]).toMatchObject({ number: '1', choice: { who: 'spectator', ways: 8 } });
    expect(margin.length).toBeGreaterThanOrEqual(2);
    for (const { moments: found } of margin) expect(found.length).toBeGreaterThan(0);
  });

  test('the cards before a step, in the same performance for the same number', () => {
    expect(ask('play', '0')).toEqual(play);
    const before = tableBefore(play!.performance, '1')!;
    expect(before.done).toBe(0);
    expect(before.table.piles[0]!.cards).toHaveLength(8);
    expect(tableBefore(play!.performance, '9')).toBeUndefined();
  });

  test('a picture ties the places that an equation ties', () => {
    const moment = {
      sizes: { packet: 4 },
      numbers: {},
      certain: 1,
      needed: 1,
      have: [
        {
          words: '',
          equations: [
            {
              p: 2,
              whole: false,
              total: 1,
              terms: [{ pile: 'packet', place: 1, coef: 1, trait: 'red cards' }],
            },
          ],
        },
      ],
      need: [
        {
          words: '',
          equations: [
            {
              p: 2,
              whole: false,
              total: 1,
              terms: [
                { pile: 'packet', place: 2, coef: 1, trait: 'red cards' },
                { pile: 'packet', place: 4, coef: 1, trait: 'red cards' },
              ],
            },
          ],
        },
      ],
    };
    expect(picturesOf(moment, undefined)).toEqual([
      {
        pile: 'packet',
        picture: {
          marks: ['filled', 'unknown', 'unknown', 'unknown'],
          have: [],
          need: [{ from: 1, to: 3 }],
          ring: false,
          blocks: [],
        },
      },
    ]);
  });
});

describe('the words that give a choice away', () => {
  test.each([
    ['Cut the packet', 'Cut'],
    ['Cut the packet at an even number', 'an even number'],
    ['Gather the piles in any order', 'any order'],
    ['Shuffle the packet freely', 'freely'],
    ['', ''],
  ])('%s', (sentence, words) => {
    const { from, to } = freeWords(sentence);
    expect(sentence.slice(from, to)).toBe(words);
  });
});
