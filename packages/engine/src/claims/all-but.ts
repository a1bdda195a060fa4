import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { FALSE, or } from './formula.ts';
import { count } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';

type AllButArgs = { n: NumberRef; bit: 'up' | 'end'; pile?: PileRef };

/** Of 4 cards 1 and 3 are all the odd numbers there are, of 2 cards none and both all the even ones: then parity tells. */
function areAllAlike(few: number, size: number): boolean {
  if (size % 2 !== 0) return false;
  const alike = Array.from({ length: size + 1 }, (_, k) => k).filter((k) => (k - few) % 2 === 0);
  return few >= 0 && few <= size && alike.every((k) => k === few || k === size - few);
}

/** C2, C3: so many cards face the other way. */
export const allBut = defineClaim<AllButArgs>({
  id: 'all-but',
  endings: ['C2', 'C3'],
  title: 'all but so many face the same way',
  phrases: [
    phrase('[exactly] (1|one) card [in {pile:pile}] faces the other way', { n: 1, bit: 'up' }),
    phrase('only one card [in {pile:pile}] faces the other way', { n: 1, bit: 'up' }),
    phrase('all but (1|one) card [in {pile:pile}] face the same way', { n: 1, bit: 'up' }),
    phrase('all but {n:number} cards [in {pile:pile}] face the same way', { bit: 'up' }),
    phrase('[exactly] (1|one) card [in {pile:pile}] points the other way', { n: 1, bit: 'end' }),
    phrase('all but {n:number} cards [in {pile:pile}] point the same way', { bit: 'end' }),
  ],
  defaults: {},
  help: 'So many cards face one way and all others the other way. Pointing is the same for the ends of the cards.',
  caution: 'Which cards these are and which way they face is open.',
  synonyms: ['one card faces the other way'],
  meaning({ n, bit, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const size = slots.value.length;
    if (size === 0) return means(FALSE);
    const set = count({ tests: [{ test: 'bit', bit }] }, slots.value, exit);
    const few = numberAt(n, exit);
    if (2 * few === size) return means(equals(set, few));
    if (areAllAlike(few, size)) return means(equals(set, few, 2));
    return means(or([equals(set, few), equals(set, size - few)]));
  },
  examples: [
    { table: 'r^ b r r', sentence: 'Exactly 1 card faces the other way.', holds: true },
    { table: 'r^ b^ r r^', sentence: 'Exactly 1 card faces the other way.', holds: true },
    { table: 'r^ b^ r r', sentence: 'All but 2 cards face the same way.', holds: true },
    { table: 'r^ b^ r r', sentence: 'All but one card face the same way.', holds: false },
    { table: "r' b r r", sentence: 'Exactly one card points the other way.', holds: true },
  ],
});
