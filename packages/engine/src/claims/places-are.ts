import { phrase } from '../phrases/phrase.ts';
import type { Groups, Kind } from '../phrases/values.ts';
import { defineClaim } from './claim.ts';
import { and } from './formula.ts';
import { ofEvery } from './gather.ts';
import { attributesOf, isKind } from './kinds.ts';

type PlacesAreArgs = { places: Groups; state: Kind };

/** C10: the cards at several places are something. */
export const placesAre = defineClaim<PlacesAreArgs>({
  id: 'places-are',
  endings: ['C10'],
  title: 'the cards at these places',
  phrases: [phrase('{places:places} are [all|both] {state:state}')],
  defaults: {},
  help: 'The top 4 cards, the top cards of the piles, the 2nd and the 5th card are aces, red, face up.',
  caution: 'If one of the places is not there the sentence is false.',
  synonyms: ['on top'],
  attributes: ({ state }) => attributesOf(state),
  meaning: ({ places, state }, exit) =>
    ofEvery(places, exit, (slots) => and(slots.map((slot) => isKind(state, slot, exit)))),
  examples: [
    { table: 'AS AH 4D 2S', sentence: 'The top 2 cards are aces.', holds: true },
    {
      table: 'pile 1: AS 9H; pile 2: AD 4C',
      sentence: 'The bottom cards of the piles are all red.',
      holds: false,
    },
    { table: 'AS 9H 4D 2S', sentence: 'The top card and the bottom card are both spades.', holds: true },
  ],
});
