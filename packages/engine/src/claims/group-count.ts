import { phrase } from '../phrases/phrase.ts';
import type { Amount, Groups, Kind } from '../phrases/values.ts';
import { exactly, stated } from './amounts.ts';
import { defineClaim, numberAt } from './claim.ts';
import { and, type Formula } from './formula.ts';
import { ofEvery } from './gather.ts';
import { ANY, attributesOf, count } from './kinds.ts';
import { equals } from './sums.ts';

type GroupCountArgs = { n: Amount; kind: Kind; groups: Groups; m?: Amount; other?: Kind };

/** C8: every pair, block or pile has so many cards of a kind. */
export const groupCount = defineClaim<GroupCountArgs>({
  id: 'group-count',
  endings: ['C8', 'C20'],
  title: 'so many in every group',
  phrases: [
    phrase('{groups:groups} has [exactly] (1|one) {kind:onekind}', { n: exactly(1) }),
    phrase('{groups:groups} has {n:howmany} {kind:kind}'),
    phrase(
      '{groups:groups} (has|contains|is|consists of) (1|one) {kind:onekind} and (1|one) {other:onekind}',
      {
        n: exactly(1),
        m: exactly(1),
      },
    ),
    phrase(
      '{groups:groups} (has|contains|is|consists of) (1|one) {kind:onestate} and (1|one) {other:onestate} [card]',
      {
        n: exactly(1),
        m: exactly(1),
      },
    ),
    phrase('{groups:groups} (has|contains|consists of) {n:howmany} {kind:kind} and {m:howmany} {other:kind}'),
    phrase(
      '{groups:groups} (has|contains|consists of) {n:howmany} {kind:state} and {m:howmany} {other:state} [cards]',
    ),
    phrase('{groups:groups} has no {kind:kind}', { n: exactly(0) }),
    phrase('[exactly] (1|one) [card] of {groups:groups} is {kind:onestate}', { n: exactly(1) }),
    phrase('{n:howmany} [cards] of {groups:groups} are {kind:state}'),
  ],
  defaults: {},
  help: 'Every pair, block, half or pile has so many cards of a kind: one face-up card, two red ones, an even number of hearts.',
  caution:
    'Cards left over after the last complete block are not spoken of, nor is the middle card of mirror pairs.',
  synonyms: ['one of every pair'],
  attributes: ({ kind, other }) => attributesOf(kind, ...(other === undefined ? [] : [other])),
  meaning({ n, kind, groups, m, other }, exit) {
    const has = (amount: Amount, of: Kind, slots: readonly number[]): Formula => {
      const sum = count(of, slots, exit);
      const isOneOfTwo = slots.length === 2 && amount.of === 'exactly' && numberAt(amount.n, exit) === 1;
      if (isOneOfTwo) return equals(sum, 1, 2);
      return stated(amount, sum, () => count(ANY, slots, exit), exit);
    };
    return ofEvery(groups, exit, (slots) =>
      m === undefined || other === undefined
        ? has(n, kind, slots)
        : and([has(n, kind, slots), has(m, other, slots)]),
    );
  },
  examples: [
    { table: 'r b^ b r^', sentence: 'Every pair has exactly 1 face-up card.', holds: true },
    { table: 'r b^ b r^', sentence: 'Exactly one of every pair is face up.', holds: true },
    { table: 'r b^ b r^', sentence: 'Every pair has one red and one black card.', holds: true },
    {
      table: 'r b b r b r r r',
      sentence: 'Every four cards have two red cards and two black cards.',
      holds: false,
    },
    { table: 'r b b r r r', sentence: 'Every block of 3 has exactly 2 red cards.', holds: false },
    { table: 'pile 1: r b b; pile 2: r r r', sentence: 'Each pile has exactly 3 cards.', holds: true },
    { table: 'r^ b b r^ r^ r^', sentence: 'An even number of every block of 3 are face up.', holds: false },
  ],
});
