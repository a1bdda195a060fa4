import { describe, expect, test } from 'vitest';
import { compile } from './compile.ts';
import { boundsSaid, sayBound } from './patter.ts';
import { read } from './read.ts';

test.each([
  ['"Anywhere in the middle, only not right to the bottom."', ['not back on top', 'not right to the bottom']],
  ['"Not on top, please, and not at the bottom."', ['not back on top', 'not right to the bottom']],
  ['"Neither on the top nor at the bottom."', ['not back on top', 'not right to the bottom']],
  ['"At least three of them."', ['at least 3']],
  ['"Three of them at least."', ['at least 3']],
  ['"Fewer than ten, and more than four."', ['at most 9', 'at least 5']],
  ['"Between ten and nineteen."', ['at least 10', 'at most 19']],
  ['"From one to twelve."', ['at most 12']],
  ['"One, two, at most three."', ['at most 3']],
  ['"Any even number."', ['an even number']],
  ['"Two at a time, as you like."', ['an even number']],
  ['"Three friends of mine, five cats, as many as you like."', []],
  ['"Not in the middle."', []],
  ['', []],
])('%s keeps to %j', (patter, said) => {
  expect(boundsSaid(patter).map(sayBound)).toEqual(said);
});

function told(step: string, patter: string): unknown[] {
  const text = `## Set-up\n\n- packet: 8 cards, face down\n\n## Working\n\n1. ${step}\n\n   > ${patter}\n\n## Ending\n\n- All cards are face down.\n`;
  return compile(read(text))
    .diagnostics.filter(({ code }) => code === 'patter-not-kept')
    .map(({ facts }) => facts.said);
}

describe('patter that keeps to less than the step', () => {
  test.each([
    ['Bury the top card anywhere.', '"Only not right to the bottom."', [['not right to the bottom']]],
    ['Bury the top card in the middle.', '"Only not right to the bottom."', []],
    ['Deal any number of cards to the table.', '"At least three."', [['at least 3']]],
    ['Deal at least 3 cards to the table.', '"At least three."', []],
    ['Deal 2 to 6 cards to the table.', '"At least three, at most six."', [['at least 3']]],
    [
      'The spectator names a number from 1 to 8, call it N.',
      '"Up to eight, but an even number."',
      [['an even number']],
    ],
    ['The spectator names an even number from 1 to 8, call it N.', '"An even number."', []],
    ['Any number of times: cut the packet.', '"At least once, twice if you like."', []],
    ['Cut the packet.', '"At least three people have tried."', [['at least 3']]],
    ['Cut the packet at 4.', '"At least three people have tried."', []],
    ['You deal any number of cards to the table.', '"At least three."', []],
  ])('%s %s', (step, patter, said) => {
    expect(told(step, patter)).toEqual(said);
  });
});
