import { check } from '@foregone/engine';
import { describe, expect, test } from 'vitest';
import { MIXES, safeRows, safeTexts } from './safe.ts';

const LAMPS = `## Set-up
- packet: 2S 9H 4C KD 7S AH JC 5D, face down

## Working
1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. Deal the packet into a pile, turning every second card.

## Ending
- Exactly 4 cards are face up.
`;

const found = (step: string | undefined) => {
  const rows = safeRows(safeTexts(LAMPS, step).map((text) => check(text).report.verdict));
  return Object.fromEntries(rows.map(({ sentence, verdict }) => [sentence, verdict]));
};

describe('what else is safe at a step', () => {
  test('before the deal, whatever keeps face-up cards alike at odd and even places', () => {
    const before = found('2');
    expect(Object.keys(before)).toEqual([...MIXES]);
    expect(before['Cut the packet.']).toBe('safe');
    expect(before['Turn over the top 2 together.']).toBe('safe');
    expect(before['Shuffle the packet freely.']).toBe('breaks');
  });

  test('after the deal, every order will do', () => {
    expect(found(undefined)['Shuffle the packet freely.']).toBe('safe');
  });
});
