import { phrase } from '../phrases/phrase.ts';
import type { Groups, Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { gather } from './gather.ts';
import { ANY, attributesOf, count } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals, minus } from './sums.ts';

type SameNumberArgs = { kind: Kind; p?: PileRef; q?: PileRef; groups?: Groups };

/** C5: piles or blocks have equally many cards of a kind. */
export const sameNumber = defineClaim<SameNumberArgs>({
  id: 'same-number',
  endings: ['C5'],
  title: 'the same number of a kind',
  phrases: [
    phrase('{p:pile} and {q:pile} have the same number of {kind:kind}'),
    phrase('{p:pile} and {q:pile} have equally many {kind:kind}'),
    phrase('(there are|) as many {kind:kind} in {p:pile} as in {q:pile}'),
    phrase('{p:pile} and {q:pile} are the same size', { kind: ANY }),
    phrase('{groups:groups} has the same number of {kind:kind}'),
    phrase('{groups:groups} has equally many {kind:kind}'),
  ],
  defaults: {},
  help: 'Two piles, or every pile, block or half, have equally many cards of a kind; "cards" counts them all.',
  caution: 'A pile that is not there has no cards.',
  synonyms: ['equally many', 'the same size'],
  attributes: ({ kind }) => attributesOf(kind),
  meaning({ kind, p, q, groups }, exit) {
    if (groups !== undefined) {
      const found = gather(groups, exit);
      if (!found.ok) return found;
      const { sets, isThere } = found.value;
      const sums = sets.map((slots) => count(kind, slots, exit));
      const formula = isThere ? and(sums.slice(1).map((sum, i) => equals(minus(sum, sums[i]), 0))) : FALSE;
      return means(formula, isThere && sets.length < 2);
    }
    const one = slotsIn(p, exit);
    if (!one.ok) return one;
    const two = slotsIn(q, exit);
    if (!two.ok) return two;
    return means(equals(minus(count(kind, one.value, exit), count(kind, two.value, exit)), 0));
  },
  examples: [
    {
      table: 'pile 1: r b r; pile 2: b r r b',
      sentence: 'Pile 1 and pile 2 have the same number of red cards.',
      holds: true,
    },
    {
      table: 'pile 1: r b r; pile 2: b r r b',
      sentence: 'There are as many black cards in pile 1 as in pile 2.',
      holds: false,
    },
    { table: 'pile 1: r b; pile 2: b r', sentence: 'Pile 1 and pile 2 are the same size.', holds: true },
    { table: 'r b b r r r', sentence: 'Every pair has the same number of red cards.', holds: false },
  ],
});
