import { phrase } from '../phrases/phrase.ts';
import type { Tally } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { attributesOf } from './kinds.ts';
import { between, minus } from './sums.ts';
import { bothNobody, tallied } from './tallies.ts';

type MoreThanArgs = { a: Tally; b: Tally };

/** C6: more of these than of those, by how many is open. */
export const moreThan = defineClaim<MoreThanArgs>({
  id: 'more-than',
  endings: ['C6'],
  title: 'more than',
  phrases: [
    phrase('there are more {a:tally} than {b:tally}'),
    phrase('there are fewer {b:tally} than {a:tally}'),
  ],
  defaults: {},
  help: 'One number of cards is greater than another.',
  caution: 'A comparison is no equation: it costs an exact search, where "so many more" does not.',
  synonyms: ['fewer than'],
  attributes: ({ a, b }) => attributesOf(a.kind, b.kind),
  meaning({ a, b }, exit) {
    const one = tallied(a, exit);
    if (!one.ok) return one;
    const two = tallied(b, exit);
    if (!two.ok) return two;
    return means(between(minus(one.value, two.value), 1, undefined), bothNobody(a, b, exit.cards));
  },
  examples: [
    {
      table: 'pile 1: r r b; pile 2: b b',
      sentence: 'There are more red cards in pile 1 than red cards in pile 2.',
      holds: true,
    },
    { table: 'r^ b r b', sentence: 'There are fewer face-up cards than face-down cards.', holds: true },
    { table: 'r^ b^ r b', sentence: 'There are more face-up cards than face-down cards.', holds: false },
  ],
});
