import { describe, expect, test } from 'vitest';
import { compiled, told, troubles } from '../../testing/notes/short.ts';

describe('joined sentences', () => {
  test.each([
    ['1. Cut the packet; turn the packet over.', ['1a cut', '1b turn-packet']],
    ['1. Cut the packet, then turn it over.', ['1a cut', '1b turn-packet']],
    ['1. Cut the packet and then turn it over.', ['1a cut', '1b turn-packet']],
    ['1. Cut the packet and turn it over.', ['1a cut', '1b turn-packet']],
    ['1. Cut the packet. Turn it over.', ['1a cut', '1b turn-packet']],
    ['1. Cut the packet.\n2. Turn it over.', ['1 cut', '2 turn-packet']],
  ])('%s', (working, steps) => {
    expect(told(working)).toEqual(steps);
  });

  test('a phrase that has the word of joining itself is one move', () => {
    expect(told('1. Cut and turn over the top 2 cards.')).toEqual(['1 cut-turn']);
    expect(told('1. Turn over the top 3 cards and, cutting deeper, the top 5 cards.')).toEqual([
      '1 cut-deeper',
    ]);
  });
});

describe('blocks', () => {
  test.each([
    ['1. Any number of times:\n   1. Cut the packet.', '1 repeat any [1.1 cut]'],
    ['1. As often as the spectator likes:\n   1. Cut the packet.', '1 repeat any [1.1 cut]'],
    ['1. Repeat any number of times: cut the packet.', '1 repeat any [1a cut]'],
    ['1. 3 times: cut the packet.', '1 repeat exactly 3 [1a cut]'],
    ['1. Three times:\n   1. Cut the packet.', '1 repeat exactly 3 [1.1 cut]'],
    ['1. Twice: cut the packet; turn the packet over.', '1 repeat exactly 2 [1a cut, 1b turn-packet]'],
    ['1. At least once: cut the packet.', '1 repeat at least 1 [1a cut]'],
    ['1. At least 3 times: cut the packet.', '1 repeat at least 3 [1a cut]'],
    ['1. You choose how often: cut the packet.', '1 repeat any by you [1a cut]'],
    ['1. Any number of times, cut the packet, then turn it over.', '1 repeat any [1a cut, 1b turn-packet]'],
    ['1. Cut the packet any number of times.', '1 repeat any [1a cut]'],
    ['1. You cut the packet as often as they like.', '1 repeat any by you [1a cut by you]'],
    ['1. Cut the packet once.', '1 cut'],
    [
      '1. Either:\n   - Cut the packet.\n   - Turn the packet over.',
      '1 either [1.1 cut] or [1.2 turn-packet]',
    ],
    ['1. You choose:\n   - Cut the packet.\n   - Do nothing.', '1 either by you [1.1 cut] or []'],
    ['1. Either cut the packet or turn it over.', '1 either [1a cut] or [1b turn-packet]'],
    [
      '1. Either cut the packet, or turn it over, or leave it as it is.',
      '1 either [1a cut] or [1b turn-packet] or []',
    ],
    ['1. Cut the packet or not.', '1 either [1a cut] or []'],
    ['1. The spectator may cut the packet.', '1 either [1a cut] or []'],
    [
      '1. You either cut the packet or turn it over.',
      '1 either by you [1a cut by you] or [1b turn-packet by you]',
    ],
    [
      '1. Either:\n   - 1. Cut the packet.\n     2. Twice:\n        1. Turn the packet over.\n   - Do nothing.',
      '1 either [1.1.1 cut, 1.1.2 repeat exactly 2 [1.1.2.1 turn-packet]] or []',
    ],
    [
      '1. Twice: either:\n   - Cut the packet.\n   - Do nothing.',
      '1 repeat exactly 2 [1a either [1.1 cut] or []]',
    ],
  ])('%s', (working, step) => {
    expect(told(working)).toEqual([step]);
  });

  test('the body on one line ends with its sentence', () => {
    expect(told('1. Twice: cut the packet. Turn the packet over.')).toEqual([
      '1a repeat exactly 2 [1aa cut]',
      '1b turn-packet',
    ]);
  });

  test('for each pile', () => {
    const working =
      '1. Deal the packet into 4 piles.\n2. For each pile: turn that pile over.\n3. Gather the piles left on right.';
    expect(told(working)).toEqual(['1 deal-piles', '2 each pile [2a turn-packet]', '3 gather']);
    const { routine } = compiled(working);
    expect(routine?.steps[1]).toMatchObject({
      counter: 'that pile',
      body: [{ args: { pile: { stem: 'pile', n: { var: 'that pile' } } } }],
    });
  });

  test('that pile is known in its block only', () => {
    expect(troubles('1. Deal the packet into 4 piles.\n2. Turn that pile over.')).toEqual([
      'it-unclear "that pile"',
    ]);
  });
});

describe('numbers', () => {
  const NAMED = '1. The spectator names a number from 1 to 5, call it N.\n';

  test.each([
    ['2. N times: cut the packet.', '2 repeat exactly n [2a cut]'],
    ['2. If N is 3: cut the packet.', '2 if n equal 3 [2a cut] else []'],
    ['2. If the spectator names 3:\n   1. Cut the packet.', '2 if n equal 3 [2.1 cut] else []'],
    ['2. If N is not 3: cut the packet.', '2 if n equal 3 [] else [2a cut]'],
    ['2. If N is more than 3, cut the packet.', '2 if n at least 4 [2a cut] else []'],
    ['2. If N is less than 3, then cut the packet.', '2 if n at most 2 [2a cut] else []'],
    [
      '2. If N is even: cut the packet. Otherwise: turn the packet over.',
      '2 if n even 0 [2a cut] else [2b turn-packet]',
    ],
    [
      '2. If N is even, cut the packet; otherwise turn the packet over.',
      '2 if n even 0 [2a cut] else [2b turn-packet]',
    ],
    [
      '2. If N is odd:\n   1. Cut the packet.\n\n   Otherwise:\n   1. Turn the packet over.',
      '2 if n odd 0 [2.1 cut] else [2.2 turn-packet]',
    ],
    [
      '2. If N is odd:\n   1. Cut the packet.\n3. Otherwise:\n   1. Turn the packet over.',
      '2 if n odd 0 [2.1 cut] else [3.1 turn-packet]',
    ],
  ])('%s', (step, wanted) => {
    expect(told(NAMED + step).slice(1)).toEqual([wanted]);
  });

  test('a number named on one way only is not named after it', () => {
    const maybe = '1. Either:\n   - The spectator names a number from 1 to 5, call it N.\n   - Do nothing.\n';
    expect(troubles(`${maybe}2. Cut the packet at N.`)).toEqual(['number-not-named "N"']);
    const both = maybe.replace('Do nothing', 'The spectator names a number from 2 to 3, call it N');
    expect(troubles(`${both}2. Cut the packet at N.`)).toEqual([]);
  });

  test('a number named in a repetition is named if that is done at least once', () => {
    const named = 'the spectator names a number from 1 to 5, call it N.\n2. Cut the packet at N.';
    expect(troubles(`1. At least once: ${named}`)).toEqual([]);
    expect(troubles(`1. Any number of times: ${named}`)).toEqual(['number-not-named "N"']);
  });

  test('both ways of an if may name it', () => {
    const ways =
      '2. If N is even: the spectator names a number from 1 to 2, call it K. Otherwise: the spectator names a number from 3 to 4, call it K.\n';
    expect(troubles(`${NAMED}${ways}3. Cut the packet at K.`)).toEqual([]);
  });
});

describe('who, and seen or unseen', () => {
  test.each([
    ['The spectator cuts the packet and completes the cut.', '1 cut'],
    ['Let the spectator cut the packet.', '1 cut'],
    ['They cut the packet.', '1 cut'],
    ['You cut the packet.', '1 cut by you'],
    ['You choose where to cut the packet.', '1 cut by you'],
    ['The spectator cuts the packet, in secret.', '1 cut in secret'],
    ['The spectator secretly cuts the packet.', '1 cut in secret'],
    ['Out of your sight, the spectator cuts the packet.', '1 cut in secret'],
    ['Cut the packet behind their back.', '1 cut in secret'],
    ['Now cut the packet again.', '1 cut'],
    ['**Cut** the packet.', '1 cut'],
    ['🃏 CUT THE PACKET!', '1 cut'],
  ])('%s', (sentence, step) => {
    expect(told(`1. ${sentence}`)).toEqual([step]);
  });

  test('who does one thing does the next, unless it says otherwise', () => {
    expect(told('1. You cut the packet, then turn it over.')).toEqual([
      '1a cut by you',
      '1b turn-packet by you',
    ]);
    expect(told('1. You cut the packet, then the spectator turns it over.')).toEqual([
      '1a cut by you',
      '1b turn-packet',
    ]);
    expect(told('1. You cut the packet; turn it over.')).toEqual(['1a cut by you', '1b turn-packet']);
  });
});

describe('it', () => {
  test('is the pile spoken of, and said to be', () => {
    const { readings } = compiled('1. Cut the packet.\n2. Turn it over.');
    expect(readings.map(({ reading }) => reading)).toContainEqual({
      word: 'it',
      taken: 'the packet',
      other: 'the name of the pile',
    });
  });

  test('is never guessed', () => {
    expect(troubles('1. Turn it over.')).toEqual(['it-unclear "it"']);
    expect(troubles('1. Twice: cut the packet.\n2. Turn it over.')).toEqual(['it-unclear "it"']);
  });
});

test('the only pile is meant where the packet would be', () => {
  const { routine } = compiled(
    '1. Turn over the top 2 cards.',
    '- All cards are black.',
    '- stock: A-8 of clubs, face down',
  );
  expect(routine?.steps[0]).toMatchObject({ args: { pile: 'stock' } });
  expect(
    troubles(
      '1. Turn over the top 2 cards.',
      '- All cards are black.',
      '- left: AC, face down\n- right: 2C, face down',
    ),
  ).toEqual(['unknown-pile "Turn over the top 2 cards"']);
});

test('the outline keeps numbers, patter and remarks', () => {
  const { outline } = compiled(
    '1. Twice:\n   1. Cut the packet.\n\n      > "Cut."\n\n   Slowly.\n\nBetween.\n\n7. Turn the packet over; cut the packet.',
  );
  expect(outline).toMatchObject([
    {
      number: '1',
      remarks: ['Slowly.'],
      patter: [],
      items: [{ number: '1.1', patter: ['"Cut."'], sentence: { text: 'Cut the packet.' } }],
    },
    { number: '2', steps: [{ number: '2a' }, { number: '2b' }] },
  ]);
});
