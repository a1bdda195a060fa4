import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, Tally } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { attributesOf } from './kinds.ts';
import { equals, minus, times as timesOf } from './sums.ts';
import { bothNobody, tallied } from './tallies.ts';

type AsManyArgs = { a: Tally; b: Tally; times: NumberRef };

/** C5: two numbers of cards are equal, or one is so many times the other. */
export const asMany = defineClaim<AsManyArgs>({
  id: 'as-many',
  endings: ['C5'],
  title: 'as many as',
  phrases: [
    phrase('(there are|) as many {a:tally} as {b:tally}'),
    phrase('(there are|) twice as many {a:tally} as {b:tally}', { times: 2 }),
    phrase('(there are|) {times:number} times as many {a:tally} as {b:tally}'),
    phrase('the number of {a:tally} (is|equals|is equal to|is the same as) the number of {b:tally}'),
  ],
  defaults: { times: 1 },
  help: 'As many cards here as there: red cards in one pile as black cards in the other, cards face up as face down.',
  caution: 'Cards of the whole table are counted unless a pile is named; name it for both sides.',
  synonyms: ['twice as many'],
  attributes: ({ a, b }) => attributesOf(a.kind, b.kind),
  meaning({ a, b, times }, exit) {
    const one = tallied(a, exit);
    if (!one.ok) return one;
    const two = tallied(b, exit);
    if (!two.ok) return two;
    return means(
      equals(minus(one.value, timesOf(two.value, numberAt(times, exit))), 0),
      bothNobody(a, b, exit.cards),
    );
  },
  examples: [
    {
      table: 'pile 1: r b r; pile 2: b b r',
      sentence: 'There are as many red cards in pile 1 as black cards in pile 2.',
      holds: true,
    },
    {
      table: 'r^ b r b^',
      sentence: 'As many red cards are face up as black cards are face up.',
      holds: true,
    },
    { table: 'r^ b r b^', sentence: 'There are as many cards face up as face down.', holds: true },
    {
      table: 'r^ b r^ b',
      sentence: 'There are as many face-up cards as black cards in the packet.',
      holds: true,
    },
    { table: 'r^ b r b', sentence: 'As many cards are face up as face down.', holds: false },
    { table: 'r b r', sentence: 'There are twice as many red cards as black cards.', holds: true },
  ],
});
