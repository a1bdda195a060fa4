import { trouble } from '../base/diagnostic.ts';
import { phrase } from '../phrases/phrase.ts';
import type { Kind, NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf, cardsOf } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';
import { eitherAt } from './two-classes.ts';

type AllExceptArgs = { kind: Kind; state: Kind; count?: NumberRef; pile?: PileRef };

/** C3: all cards are something, except those of a kind, which are not. */
export const allExcept = defineClaim<AllExceptArgs>({
  id: 'all-except',
  endings: ['C3'],
  title: 'all except those are',
  phrases: [
    phrase('[in {pile:pile}] all but the {count:number} {kind:class} are {state:state}'),
    phrase('[in {pile:pile}] all but {kind:those} are {state:state}'),
    phrase('[in {pile:pile}] all cards except {kind:those} are {state:state}'),
  ],
  defaults: {},
  help: 'Cards of the kind are not face down (or whatever is said), and every other card is.',
  caution:
    'The exceptions are meant to be exceptions: if one of them is like the rest, the sentence is false.',
  synonyms: ['all but the four aces'],
  attributes: ({ kind, state }) => attributesOf(kind, state),
  check({ kind, count }, cards) {
    const { least, most } = cardsOf(kind, cards);
    if (typeof count !== 'number' || (count >= least && count <= most)) return [];
    return [trouble('wrong-number', { said: count, cards: most })];
  },
  meaning({ kind, state, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    return means(and(slots.value.map((slot) => equals(eitherAt(kind, state, slot, exit), 1, 2))));
  },
  examples: [
    { table: 'AS^ 9H AH^ 4D', sentence: 'All but the aces are face down.', holds: true },
    { table: 'AS^ 9H AH 4D', sentence: 'All but the 2 aces are face down.', holds: false },
    { table: 'r^ b^(chosen) r^', sentence: 'All cards except the chosen cards are face up.', holds: false },
  ],
});
