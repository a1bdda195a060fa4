import { describe, expect, test } from 'vitest';
import { noteText, routineIn } from '../../testing/note-text.ts';
import { check } from '../check.ts';
import { Stage } from './stage.ts';

const DEALT = noteText(
  ['packet: 2S 9H 4C KD 7S AH JC 5D, face down'],
  [
    'Any number of times:',
    '   1. Cut the packet.',
    '   2. Turn over the top 3 together.',
    'Deal the packet into a pile, turning every second card.',
  ],
  ['Exactly 4 cards are face up.'],
);

describe('a refuted sentence', () => {
  const { report } = check(DEALT);
  const [sentence] = report.sentences;

  test('comes with its shortest performance, which its choices play again', () => {
    expect(report.verdict).toBe('refuted');
    expect(sentence.failure?.shortest).toBe(true);
    const stage = new Stage(routineIn(DEALT), DEALT);
    const again = stage.byKeys((sentence.failure?.choices ?? []).map(String));
    expect(again.ok && stage.performance(again.value)).toEqual(sentence.failure?.performance);
    expect(again.ok && stage.judge(again.value).map(({ holds, shows }) => [holds, shows])).toEqual([
      [false, sentence.failure?.shows],
    ]);
  });

  test('costs what its steps say', () => {
    const { cost, steps } = sentence.failure?.performance ?? { cost: undefined, steps: [] };
    expect(cost?.steps).toBe(steps.filter(({ is }) => is === 'move').length);
    expect(cost?.decisions).toBe(1);
  });
});

test('cards left over after the last block are spoken of', () => {
  const ending = 'Every block of 3 has exactly 1 face-up card.';
  const { report } = check(noteText(['packet: 8 cards, face down'], ['Turn the packet over.'], [ending]));
  expect(report.sentences[0].why).toContain('Cards left over after the last block of 3: 2.');
});

test.each([
  ['Exactly 2 cards are face up.', ['packet: 4 cards, face down'], '0 face-up cards in the packet, not 2'],
  [
    'At least 2 cards are face up.',
    ['packet: 4 cards, face down'],
    '0 face-up cards in the packet, not at least 2',
  ],
  ['The top card is the 9H.', ['packet: 2S 9H, face down'], 'place 1 has 2S'],
  [
    'Every pair agrees in colour.',
    ['packet: 2S 9H 4C KD, face down'],
    'place 1 has 2S and place 2 has 9H; it fails at one more place',
  ],
  [
    'There are as many red cards in the left as black cards in the right.',
    ['left: 3 red cards, face down', 'right: 2 black cards, face down'],
    '3 red cards in the left and 2 black cards in the right',
  ],
  [
    'If the top card is red, then the bottom card is red.',
    ['packet: 9H 2S, face down'],
    'the condition is met, yet place 2 has 2S',
  ],
])('%s: how it stands on the last table', (ending, setUp, shows) => {
  const turned = setUp.length > 1 ? 'Turn the left over.' : 'Cut the packet at 0.';
  const { report } = check(noteText(setUp, [turned], [ending]));
  expect(report.sentences.map(({ verdict, failure }) => [verdict, failure?.shows])).toEqual([
    ['refuted', shows],
  ]);
});

test('an ambiguous word is told with its step and both readings', () => {
  const { report } = check(DEALT);
  expect(report.readings[0]).toMatchObject({
    number: '1.1',
    sentence: 'Cut the packet',
    word: 'cut',
    taken: 'the cut is completed',
    confirmed: false,
  });
});

test('nothing is said of a note that is not understood but what stands in the way', () => {
  const { report, decision } = check(
    noteText(['packet: 4 cards, face down'], ['Frobnicate the packet.'], ['All cards are face down.']),
  );
  expect(decision).toBeUndefined();
  expect(report).toMatchObject({ verdict: 'not understood', sentences: [], coverage: null });
  expect(report.summary).toBe('Not understood: 1 thing stands in the way of a verdict.');
  expect(report.diagnostics.filter(({ severity }) => severity === 'error')).toMatchObject([
    { line: 9, column: 4 },
  ]);
});

test('empty is never proved', () => {
  expect(check(noteText(['packet: 4 cards, face down'], ['Cut the packet.'], [])).report.verdict).toBe(
    'empty',
  );
  const never = check(
    noteText(
      ['packet: 4 cards, face down'],
      ['Cut the packet.'],
      ['If all cards are face up, then all cards are face down.'],
    ),
  );
  expect(never.report.verdict).toBe('empty');
  expect(never.report.sentences[0].why).not.toBe('');
});

test('undecided says how far it went and what chance gave', () => {
  const text = noteText(
    ['packet: A-9 of spades, face down'],
    ['Shuffle the packet.'],
    ['The values ascend or all cards are face down.'],
  );
  const { report } = check(text, { work: 1_000_000, states: 100, trials: 20, seed: 5 });
  expect(report.verdict).toBe('undecided');
  const [{ why, trials }] = report.sentences;
  expect(trials).toEqual({ runs: 20, failures: 0, seed: 5 });
  expect(why).toContain('20 random performances (seed 5): none failed, which proves nothing.');
});

test('what the performer does is told with the sentence it makes true', () => {
  const text = noteText(
    ['packet: 2S 9H 4C KD, face down'],
    [
      'The spectator notes the 2nd card, call it chosen.',
      'Deal the packet into 2 piles.',
      'You choose:',
      '   - Put pile 1 on pile 2.',
      '   - Put pile 2 on pile 1.',
    ],
    ['The 2nd card is chosen.'],
  );
  const { report } = check(text);
  expect(report.verdict).toBe('proved');
  expect(report.sentences[0].rule?.map(({ step, choice }) => [step, choice])).toEqual([
    ['3', 'second way: Put pile 2 on pile 1'],
  ]);
});
