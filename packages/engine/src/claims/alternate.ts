import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { slotsIn } from './piles.ts';
import { allAgree, attributesIn, digitsOf, twoDiffer } from './traits.ts';

type AlternateArgs = { relation: string; pile: PileRef };

/** C11, C19: two values take turns all through a pile. */
export const alternate = defineClaim<AlternateArgs>({
  id: 'alternate',
  endings: ['C11', 'C19'],
  title: 'alternate',
  phrases: [
    phrase('the {relation:relations} [(of|in) {pile:pile}] alternate'),
    phrase('{pile:pile} alternates in {relation:relation}'),
    phrase('the cards [(of|in) {pile:pile}] alternate in {relation:relation}'),
    phrase('the cards [(of|in) {pile:pile}] alternate [between] red and black', { relation: 'colour' }),
    phrase('{pile:pile} alternates [between] red and black', { relation: 'colour' }),
    phrase('red and black [cards] alternate [in {pile:pile}]', { relation: 'colour' }),
    phrase('(odd and even|even and odd) [cards|values] alternate [in {pile:pile}]', { relation: 'parity' }),
  ],
  defaults: { pile: 'packet' },
  help: 'The colours (or facings, parities, two classes of your own) take turns from top to bottom; which comes first is open.',
  caution: 'With an odd number of cards the two ends are alike, so a cut then spoils it.',
  synonyms: ['alternating'],
  attributes: ({ relation }) => attributesIn(relation),
  meaning({ relation, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const all = slots.value;
    if (all.length < 2) return means(all.length === 0 ? FALSE : and([]), all.length === 1);
    if (digitsOf(relation, exit).length === 1)
      return means(and(all.slice(1).map((slot, i) => twoDiffer(relation, all[i], slot, exit))));
    const again = all.slice(2).map((slot, i) => allAgree(relation, [all[i], slot], exit));
    return means(and([twoDiffer(relation, all[0], all[1], exit), ...again]));
  },
  examples: [
    { table: 'r b r b r', sentence: 'The colours alternate.', holds: true },
    { table: 'r b b r', sentence: 'The colours alternate.', holds: false },
    { table: 'pile 1: r^ b r^; pile 2: r', sentence: 'The facings of pile 1 alternate.', holds: true },
    { table: 'AS 2H 3S 4H', sentence: 'The suits alternate.', holds: true },
    { table: 'AS 2H 3D 4H', sentence: 'The suits alternate.', holds: false },
  ],
});
