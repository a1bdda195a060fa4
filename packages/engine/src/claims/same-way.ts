import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { FALSE } from './formula.ts';
import { attributesOf, isNobody } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { sameWay as oneWay } from './traits.ts';

type SameWayArgs = { kind: Kind; bit: 'up' | 'end'; pile?: PileRef };

/** C3: all face the same way, whichever that is. */
export const sameWay = defineClaim<SameWayArgs>({
  id: 'same-way',
  endings: ['C3'],
  title: 'all face the same way',
  phrases: [
    phrase('all {kind:kind} [(in|of) {pile:pile}] face the same way', { bit: 'up' }),
    phrase('all {kind:kind} [(in|of) {pile:pile}] face one way', { bit: 'up' }),
    phrase('all {kind:kind} [(in|of) {pile:pile}] point the same way', { bit: 'end' }),
    phrase('all {kind:kind} [(in|of) {pile:pile}] point one way', { bit: 'end' }),
  ],
  defaults: {},
  help: 'All cards of a kind are face up, or all of them are face down. To point the same way is the same for the ends of the cards.',
  caution: 'It is open which way; say "are face down" if that matters.',
  synonyms: ['face one way', 'point the same way'],
  attributes: ({ kind }) => attributesOf(kind),
  meaning({ kind, bit, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    return means(oneWay(bit, kind, slots.value, exit), isNobody(kind, exit.cards));
  },
  examples: [
    { table: 'r^ b^ r^', sentence: 'All cards face the same way.', holds: true },
    { table: 'r^ b r^', sentence: 'All cards face the same way.', holds: false },
    { table: 'r^ b r^', sentence: 'All red cards face the same way.', holds: true },
    { table: "r' b r'", sentence: 'All cards point the same way.', holds: false },
  ],
});
