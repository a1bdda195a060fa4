import { expect, test } from 'vitest';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { Freedom, Routine, Sentence } from '../../src/routine/routine.ts';
import { judge } from '../naive/judge.ts';
import { Bits } from '../naive/table.ts';
import { sentenceAt } from '../naive/truth.ts';
import { walkAll } from '../naive/walk.ts';
import { claim, either, repeat, working } from '../naive/write.ts';
import { compare } from './compare.ts';

// Small routines on which the engine and the walk once differed.

function ending(routine: Routine, sentence: Sentence, ...freedoms: Freedom[]): Routine {
  const endings = [{ text: 'the end', range: { from: 0, to: 0 }, sentence }];
  return { ...routine, setUp: { ...routine.setUp, freedoms }, endings };
}

/** The verdict of the walk, after making sure that the engine's is the same and its failing performance real. */
function agreed(routine: Routine): string {
  const bits = new Bits();
  const walks = walkAll(routine, 1000, bits);
  const judged = routine.endings.map(({ sentence }) => judge(walks, sentenceAt(sentence), bits));
  compare({ routine, walks, bits, judged }, 0, decide(routine).sentences[0]);
  return judged[0].verdict;
}

test('a card whose colour is open is not taken for its last colour', () => {
  const open: Freedom = { free: 'attribute', attribute: 'colour', values: ['red', 'black'], cards: [0] };
  const routine = working('AH 2H', 'Cut the packet.');
  expect(agreed(ending(routine, claim('Exactly 1 card is black.'), open))).toBe('refuted');
  expect(agreed(ending(routine, claim('Exactly 2 cards are red.'), open))).toBe('refuted');
  expect(agreed(ending(routine, claim('At most 1 cards are black.'), open))).toBe('proved');
});

test('"N times" is settled when it begins, whatever N becomes meanwhile', () => {
  const routine = working(
    'AH 2S 3H 4S',
    'The spectator names a number from 2 to 2, call it N.',
    repeat(
      { of: 'exactly', n: { var: 'n' } },
      'Cut the packet at 1.',
      'The spectator names a number from 1 to 1, call it N.',
    ),
  );
  expect(agreed(ending(routine, claim('The top card is the 3H.')))).toBe('proved');
});

test('a condition met only where nothing follows from it proves nothing', () => {
  // One card has no colours that could alternate; where there are two, a card is face down.
  const one = 'Cut off 1 card to the hand.';
  const two = 'Cut off 2 cards to the hand.';
  const then = claim('The colours in the hand alternate.');
  const inHand = working('AH^ 2S 3H', either([one], [two]));
  const when = claim('No card in the hand is face down.');
  expect(agreed(ending(inHand, { says: 'if', when, then }))).toBe('empty');
  // The same where sizes alone tell whether the condition is met.
  const bySize = claim('The hand holds exactly one card.');
  expect(agreed(ending(inHand, { says: 'if', when: bySize, then }))).toBe('empty');
});

test('one card in any order is tried like any other set-up', () => {
  const single: Freedom = { free: 'order', pile: 'hand', from: 0, count: 1 };
  const turned = working('AH 2S 3H; hand: 4S', 'Turn over some cards from the top.');
  const routine = ending(turned, claim('At least 1 cards are face up.'), single);
  expect(agreed(routine)).toBe('proved');
  // Without room for its tables the search leaves it to trials.
  const starved = decide(routine, { ...DEFAULT_LIMITS, states: 0 });
  expect(starved.sentences[0]).toMatchObject({ verdict: 'undecided', trials: { failures: 0 } });
});
