import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, PileRef, PlaceRef } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { FALSE } from './formula.ts';
import { ANY } from './kinds.ts';
import { notNumbers } from './numeric-check.ts';
import { placeIn, slotsIn } from './piles.ts';
import { equals } from './sums.ts';
import { totalOf } from './totals.ts';

type ValueAtArgs = { place: PlaceRef; n: NumberRef; attribute: string; pile: PileRef };

/** C13: the value of a card tells a number, such as a secret one. */
export const valueAt = defineClaim<ValueAtArgs>({
  id: 'value-at',
  endings: ['C13'],
  title: 'a value tells a number',
  phrases: [
    phrase('the {attribute:numeric} of {place:place} [(of|in) {pile:pile}] is {n:number}'),
    phrase('{place:place} [(of|in) {pile:pile}] tells {n:number} [in {attribute:numeric}]'),
  ],
  defaults: { attribute: 'value', pile: 'packet' },
  help: 'The value of the card at a place is a number: one that was named or counted before, or one you state.',
  caution: 'Ace is 1, jack 11, queen 12, king 13 unless the note says otherwise.',
  synonyms: ['tells'],
  attributes: ({ attribute }) => [attribute],
  check: ({ attribute }, cards) => notNumbers(attribute, cards),
  meaning({ place, n, attribute, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const slot = placeIn(place, slots.value, exit);
    return means(
      slot === undefined ? FALSE : equals(totalOf(attribute, ANY, [slot], exit), numberAt(n, exit)),
    );
  },
  examples: [
    { table: 'n = 9; 9H 10C 4D', sentence: 'The value of the top card is N.', holds: true },
    { table: '9H 10C QD', sentence: 'The value of the 3rd card is 12.', holds: true },
    { table: '9H 10C QD', sentence: 'The bottom card tells 10.', holds: false },
  ],
});
