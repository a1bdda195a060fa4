import { describe, expect, test } from 'vitest';
import { compiled, toldEnding, troubles } from '../../testing/notes/short.ts';

const RED = 'the top card is red';
const BLACK = 'the bottom card is black';

describe('sentences of the ending', () => {
  test.each([
    ['If the top card is red, then the bottom card is black.', 'if(place-is, place-is)'],
    ['If the top card is red, the bottom card is black.', 'if(place-is, place-is)'],
    ['The bottom card is black if the top card is red.', 'if(place-is, place-is)'],
    ['The top card is red exactly when the bottom card is black.', 'iff(place-is, place-is)'],
    ['The top card is red if and only if the bottom card is black.', 'iff(place-is, place-is)'],
    ['The top card is red or the bottom card is black.', 'or(place-is, place-is)'],
    ['Either the top card is red or the bottom card is black.', 'or(place-is, place-is)'],
    ['The top card is red, and the bottom card is black.', 'and(place-is, place-is)'],
    ['It is not true that the top card is red.', 'not(place-is)'],
    ['The top card is red, up to a cut.', 'upto-cut-packet(place-is)'],
    ['Up to a cut of the packet, the top card is red.', 'upto-cut-packet(place-is)'],
    ['The top card is red, up to turning the packet over.', 'upto-turn-packet(place-is)'],
  ])('%s', (sentence, wanted) => {
    expect(toldEnding(`- ${sentence}`)).toBe(wanted);
  });

  test('"or" joins last but for "exactly when", brackets say otherwise', () => {
    expect(toldEnding(`- ${RED} and ${BLACK} or ${RED}.`)).toBe('or(and(place-is, place-is), place-is)');
    expect(toldEnding(`- ${RED} and (${BLACK} or ${RED}).`)).toBe('and(place-is, or(place-is, place-is))');
    expect(toldEnding(`- ${RED} or ${BLACK} exactly when ${RED}.`)).toBe(
      'iff(or(place-is, place-is), place-is)',
    );
    expect(toldEnding(`- It is not true that ${RED} and ${BLACK}.`)).toBe('not(and(place-is, place-is))');
    expect(toldEnding(`- (it is not true that ${RED}) and ${BLACK}.`)).toBe('and(not(place-is), place-is)');
  });

  test('each is proved on its own', () => {
    const { routine } = compiled(
      '1. Cut the packet.',
      `- The top card is red. ${BLACK}; all cards are black.\n- ${RED}`,
    );
    expect(routine?.endings.map(({ text }) => text)).toEqual([
      'The top card is red',
      'the bottom card is black',
      'all cards are black',
      'the top card is red',
    ]);
  });

  test.each([
    [`With probability at least 0.8, ${RED}.`, { n: 8, d: 10 }],
    [`With a chance of at least 80 percent, ${RED}.`, { n: 80, d: 100 }],
    [`With probability at least 87.5%, ${RED}.`, { n: 875, d: 1000 }],
    [`${RED} with probability at least 4 in 5.`, { n: 4, d: 5 }],
    [`With probability at least 1, ${RED}.`, { n: 1, d: 1 }],
  ])('a chance: %s', (sentence, chance) => {
    const { routine } = compiled('1. Cut the packet.', `- ${sentence}`);
    expect(routine?.endings.map((ending) => [ending.chance, ending.sentence.says])).toEqual([
      [chance, 'claim'],
    ]);
  });

  test('a chance that is none, and one in the middle of a sentence', () => {
    expect(troubles('1. Cut the packet.', `- With probability at least 8, ${RED}.`)).toEqual([
      'chance-number "With probability at least 8"',
    ]);
    expect(troubles('1. Cut the packet.', `- With probability nearly 1, ${RED}.`)).toEqual([
      'chance-number "With probability nearly 1"',
    ]);
    expect(
      troubles('1. Cut the packet.', `- If ${BLACK}, then with probability at least 0.8, ${RED}.`),
    ).toEqual(['chance-nested "with probability at least 0.8"']);
  });

  test('the part that fails is the trouble', () => {
    expect(troubles('1. Cut the packet.', `- ${RED} and the bottom card is blakc.`)).toEqual([
      'sentence-not-understood "blakc"',
    ]);
    expect(troubles('1. Cut the packet.', `- If the top card is rde, then ${BLACK}.`)).toEqual([
      'sentence-not-understood "rde"',
    ]);
  });

  test('the end of a note may be left out, with nothing then to prove', () => {
    expect(compiled('1. Cut the packet.', '').routine?.endings).toEqual([]);
  });
});
