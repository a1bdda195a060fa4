import { describe, expect, test } from 'vitest';
import {
  clashes,
  examplesAreTrue,
  isComplete,
  phrasesReadBack,
  runsAreSound,
} from '../../testing/move-laws.ts';
import { MOVES } from './index.ts';

describe.each(MOVES.map((move) => [move.id, move] as const))('%s', (_id, move) => {
  test('every part is there', () => {
    expect(() => isComplete(move)).not.toThrow();
  });
  test('the examples are true', () => {
    expect(() => examplesAreTrue(move)).not.toThrow();
  });
  test('phrases print and read back', () => {
    expect(() => phrasesReadBack(move)).not.toThrow();
  });
  test('options, actions and runs are sound', () => {
    expect(() => runsAreSound(move)).not.toThrow();
  });
});

test('no sentence is two moves', () => {
  expect(clashes(MOVES)).toEqual([]);
});

test('moves have names of their own', () => {
  expect(new Set(MOVES.map(({ id }) => id)).size).toBe(MOVES.length);
});
