import { phrase } from '../phrases/phrase.ts';
import type { Kind, NumberRef, PileRef, PlaceRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { FALSE } from './formula.ts';
import { attributesOf, isKind } from './kinds.ts';
import { placeIn, slotsIn } from './piles.ts';

type PlaceIsArgs = { place?: PlaceRef; n?: NumberRef; end: string; state: Kind; pile: PileRef };

const TOP: PlaceRef = { end: 'top', n: 1 };
const BOTTOM: PlaceRef = { end: 'bottom', n: 1 };

/** C1, C10, C14: what the card at a place is. */
export const placeIs = defineClaim<PlaceIsArgs>({
  id: 'place-is',
  endings: ['C1', 'C10', 'C14'],
  title: 'the card at a place',
  phrases: [
    phrase('{place:place} [(of|in) {pile:pile}] is {state:onestate}'),
    phrase('the {state:oneclass} is {place:place} [(of|in) {pile:pile}]'),
    phrase('the {state:oneclass} is at {place:spot} [(of|in) {pile:pile}]'),
    phrase('the {state:oneclass} is {place:spot} [(of|in) {pile:pile}]'),
    phrase('the {state:oneclass} is on top [(of|in) {pile:pile}]', { place: TOP }),
    phrase('the {state:oneclass} is (the last|the last card) [(of|in) {pile:pile}]', { place: BOTTOM }),
    phrase(
      'the {state:oneclass} is at (place|number) {n:number} [from the {end=top|bottom}] [(of|in) {pile:pile}]',
    ),
    phrase('the last card [(of|in) {pile:pile}] is {state:onestate}', { place: BOTTOM }),
  ],
  defaults: { pile: 'packet', end: 'top' },
  help: 'The card at a place of a pile is the chosen card, the ten of clubs, red, face up. The last card is the one at the bottom.',
  caution:
    'Places are counted from the top unless the sentence says from the bottom. If there is no such place the sentence is false.',
  synonyms: ['on top', 'the last card'],
  attributes: ({ state }) => attributesOf(state),
  meaning({ place, n, end, state, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    // A place or its number is in every phrase.
    const asked: PlaceRef = place ?? { end: end === 'bottom' ? 'bottom' : 'top', n: n ?? 0 };
    const slot = placeIn(asked, slots.value, exit);
    return means(slot === undefined ? FALSE : isKind(state, slot, exit));
  },
  examples: [
    { table: 'r b(chosen) r', sentence: 'The 2nd card is chosen.', holds: true },
    { table: 'r b(chosen) r', sentence: 'The chosen card is on top.', holds: false },
    { table: 'pile 1: 9H 10C; pile 2: 4D', sentence: 'The bottom card of pile 1 is the 10C.', holds: true },
    { table: '9H 10C 4D', sentence: 'The 10C is the 2nd card from the bottom.', holds: true },
    { table: '9H 10C 4D', sentence: 'The 10C is at the 2nd place.', holds: true },
    { table: 'n = 3; 9H 10C 4D', sentence: 'The 9H is at number N from the bottom.', holds: true },
    { table: '9H 10C 4D', sentence: 'The top card is a red ace.', holds: false },
    { table: 'n = 3; 9H 10C 4D', sentence: 'The Nth card is the 4D.', holds: true },
  ],
});
