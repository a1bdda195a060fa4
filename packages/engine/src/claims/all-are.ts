import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { FALSE } from './formula.ts';
import { allAre as everyIs, ANY, attributesOf, isNobody } from './kinds.ts';
import { slotsIn } from './piles.ts';

type AllAreArgs = { kind: Kind; state: Kind; pile?: PileRef };

/** C3, C9: every card of a kind is something. */
export const allAre = defineClaim<AllAreArgs>({
  id: 'all-are',
  endings: ['C3', 'C9'],
  title: 'all cards are',
  phrases: [
    phrase('all {kind:kind} [(in|of) {pile:pile}] are {state:state}'),
    phrase('every {kind:onekind} [(in|of) {pile:pile}] is {state:onestate}'),
    phrase('the {kind:kind} [(in|of) {pile:pile}] are all {state:state}'),
    phrase('{pile:pile} is all {state:state}', { kind: ANY }),
  ],
  defaults: {},
  help: 'Every card of a kind, on the whole table or in one pile, is red, face up, an ace, and so on.',
  caution:
    'Face up and face down are meant as the cards lie now; to leave open which way, say that they face the same way.',
  synonyms: ['every'],
  attributes: ({ kind, state }) => attributesOf(kind, state),
  meaning({ kind, state, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    return means(everyIs(kind, state, slots.value, exit), isNobody(kind, exit.cards));
  },
  examples: [
    { table: 'r^ b r^', sentence: 'All red cards are face up.', holds: true },
    { table: 'r^ b r', sentence: 'Every red card is face up.', holds: false },
    { table: 'pile 1: r r; pile 2: b b', sentence: 'Pile 1 is all red.', holds: true },
    { table: 'pile 1: r r; pile 2: b r', sentence: 'All cards in pile 2 are black.', holds: false },
  ],
});
