import { phrase } from '../phrases/phrase.ts';
import type { Amount, Groups, Kind } from '../phrases/values.ts';
import { exactly, stated } from './amounts.ts';
import { defineClaim, numberAt } from './claim.ts';
import { ofEvery } from './gather.ts';
import { ANY, attributesOf, count } from './kinds.ts';
import { equals } from './sums.ts';

type GroupCountArgs = { n: Amount; kind: Kind; groups: Groups };

/** C8: every pair, block or pile has so many cards of a kind. */
export const groupCount = defineClaim<GroupCountArgs>({
  id: 'group-count',
  endings: ['C8', 'C20'],
  title: 'so many in every group',
  phrases: [
    phrase('{groups:groups} has [exactly] (1|one) {kind:onekind}', { n: exactly(1) }),
    phrase('{groups:groups} has {n:howmany} {kind:kind}'),
    phrase('{groups:groups} has no {kind:kind}', { n: exactly(0) }),
    phrase('[exactly] (1|one) [card] of {groups:groups} is {kind:onestate}', { n: exactly(1) }),
    phrase('{n:howmany} [cards] of {groups:groups} are {kind:state}'),
  ],
  defaults: {},
  help: 'Every pair, block, half or pile has so many cards of a kind: one face-up card, two red ones, an even number of hearts.',
  caution:
    'Cards left over after the last complete block are not spoken of, nor is the middle card of mirror pairs.',
  synonyms: ['one of every pair'],
  attributes: ({ kind }) => attributesOf(kind),
  meaning({ n, kind, groups }, exit) {
    return ofEvery(groups, exit, (slots) => {
      const sum = count(kind, slots, exit);
      const isOneOfTwo = slots.length === 2 && n.of === 'exactly' && numberAt(n.n, exit) === 1;
      if (isOneOfTwo) return equals(sum, 1, 2);
      return stated(n, sum, () => count(ANY, slots, exit), exit);
    });
  },
  examples: [
    { table: 'r b^ b r^', sentence: 'Every pair has exactly 1 face-up card.', holds: true },
    { table: 'r b^ b r^', sentence: 'Exactly one of every pair is face up.', holds: true },
    { table: 'r b b r r r', sentence: 'Every block of 3 has exactly 2 red cards.', holds: false },
    { table: 'pile 1: r b b; pile 2: r r r', sentence: 'Each pile has exactly 3 cards.', holds: true },
    { table: 'r^ b b r^ r^ r^', sentence: 'An even number of every block of 3 are face up.', holds: false },
  ],
});
