import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, Tally } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { attributesOf } from './kinds.ts';
import { equals, minus } from './sums.ts';
import { bothNobody, tallied } from './tallies.ts';

type DifferenceArgs = { d: NumberRef; a: Tally; b: Tally };

/** C6: so many more of these than of those. */
export const difference = defineClaim<DifferenceArgs>({
  id: 'difference',
  endings: ['C6'],
  title: 'so many more than',
  phrases: [
    phrase('the number of {a:tally} is {d:number} more than the number of {b:tally}'),
    phrase('there (are|is) {d:number} more {a:tally} than {b:tally}'),
    phrase('there (are|is) {d:number} fewer {b:tally} than {a:tally}'),
    phrase('the number of {b:tally} is {d:number} (less|fewer) than the number of {a:tally}'),
  ],
  defaults: {},
  help: 'The difference of two numbers of cards is so much.',
  caution: 'Cards of the whole table are counted unless a pile is named.',
  synonyms: ['so many more', 'so many fewer'],
  attributes: ({ a, b }) => attributesOf(a.kind, b.kind),
  meaning({ d, a, b }, exit) {
    const one = tallied(a, exit);
    if (!one.ok) return one;
    const two = tallied(b, exit);
    if (!two.ok) return two;
    return means(equals(minus(one.value, two.value), numberAt(d, exit)), bothNobody(a, b, exit.cards));
  },
  examples: [
    {
      table: 'pile 1: r r b; pile 2: b r',
      sentence: 'There are 1 more red cards in pile 1 than red cards in pile 2.',
      holds: true,
    },
    {
      table: 'r^ b^ r^ b',
      sentence: 'The number of face-up cards is 2 more than the number of face-down cards.',
      holds: true,
    },
    { table: 'r^ b^ r^ b', sentence: 'There are 2 fewer face-up cards than face-down cards.', holds: false },
  ],
});
