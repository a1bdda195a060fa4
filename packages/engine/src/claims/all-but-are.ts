import { phrase } from '../phrases/phrase.ts';
import type { Kind, NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { FALSE } from './formula.ts';
import { attributesOf, count } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';

type AllButAreArgs = { n: NumberRef; state: Kind; pile?: PileRef };

/** C3, C4: all cards but so many are something. */
export const allButAre = defineClaim<AllButAreArgs>({
  id: 'all-but-are',
  endings: ['C3', 'C4'],
  title: 'all but so many are',
  phrases: [
    phrase('all but (1|one) card [in {pile:pile}] are {state:state}', { n: 1 }),
    phrase('all but {n:number} cards [in {pile:pile}] are {state:state}'),
  ],
  defaults: {},
  help: 'Exactly so many cards are not face up, not red, and so on, and all others are.',
  caution: 'Which cards are the exceptions is open.',
  synonyms: ['all but one'],
  attributes: ({ state }) => attributesOf(state),
  meaning({ n, state, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    return means(equals(count(state, slots.value, exit), slots.value.length - numberAt(n, exit)));
  },
  examples: [
    { table: 'r^ b^ r b^', sentence: 'All but 1 card are face up.', holds: true },
    { table: 'r^ b^ r b', sentence: 'All but 2 cards are face down.', holds: true },
    { table: 'r^ b^ r b', sentence: 'All but one card are face up.', holds: false },
  ],
});
