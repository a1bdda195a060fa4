import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';
import { eitherAt } from './two-classes.ts';

type ExactlyThoseArgs = { kind: Kind; state: Kind; pile?: PileRef };

/** C3: the cards of a kind are something, and no other card is. */
export const exactlyThose = defineClaim<ExactlyThoseArgs>({
  id: 'exactly-those',
  endings: ['C3'],
  title: 'exactly those cards are',
  phrases: [
    phrase('exactly {kind:those} [(in|of) {pile:pile}] (are|is) {state:state}'),
    phrase('a card [(in|of) {pile:pile}] is {state:onestate} exactly when it is {kind:onestate}'),
  ],
  defaults: {},
  help: 'Every card of the kind is face up (or whatever is said) and no other card is.',
  caution:
    '"Exactly 4 aces are face up" counts aces and says nothing of other cards; "exactly the aces" speaks of every card.',
  synonyms: ['exactly when'],
  attributes: ({ kind, state }) => attributesOf(kind, state),
  meaning({ kind, state, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    return means(and(slots.value.map((slot) => equals(eitherAt(kind, state, slot, exit), 0, 2))));
  },
  examples: [
    { table: 'r^ b r^ b', sentence: 'Exactly the red cards are face up.', holds: true },
    { table: 'r^ b r b', sentence: 'Exactly the red cards are face up.', holds: false },
    { table: 'r^ b^ r^ b', sentence: 'A card is face up exactly when it is red.', holds: false },
    { table: '10C^ 9H 4D', sentence: 'Exactly the 10C are face up.', holds: true },
  ],
});
