import { describe, expect, test } from 'vitest';
import {
  certainCardIsSound,
  clashes,
  examplesAreTrue,
  isComplete,
  lackingIsTrouble,
  meaningIsSound,
  phrasesReadBack,
} from '../../testing/claim-laws.ts';
import { claimById, CLAIMS } from './index.ts';

describe.each(CLAIMS.map((claim) => [claim.id, claim] as const))('%s', (_id, claim) => {
  test('every part is there', () => {
    expect(() => isComplete(claim)).not.toThrow();
  });
  test('the examples are true and read by this claim only', () => {
    expect(() => examplesAreTrue(claim, CLAIMS)).not.toThrow();
  });
  test('phrases print and read back', () => {
    expect(() => phrasesReadBack(claim)).not.toThrow();
  });
  test('the meaning is total, reads what it declares and is true when the sentence is', () => {
    expect(() => meaningIsSound(claim)).not.toThrow();
  });
  test('a card that lacks what is spoken of is a trouble', () => {
    expect(() => lackingIsTrouble(claim)).not.toThrow();
  });
});

const OF_ONE_CARD =
  'only-other-way card-is card-in card-among only-card distance next-to between value-place place-is reads starting-order';

test.each(OF_ONE_CARD.split(' '))('%s says the truth of a card that is there', (id) => {
  expect(() => certainCardIsSound(claimById(id))).not.toThrow();
});

test('no sentence is two claims', () => {
  expect(clashes(CLAIMS)).toEqual([]);
});

test('claims have names of their own', () => {
  expect(new Set(CLAIMS.map(({ id }) => id)).size).toBe(CLAIMS.length);
  for (const claim of CLAIMS) expect(claimById(claim.id)).toBe(claim);
});
