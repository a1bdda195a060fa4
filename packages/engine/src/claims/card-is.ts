import { phrase } from '../phrases/phrase.ts';
import type { Kind } from '../phrases/values.ts';
import { allSlots, defineClaim, means } from './claim.ts';
import { and } from './formula.ts';
import { allAre, attributesOf, isOneCard, notOneCard } from './kinds.ts';

type CardIsArgs = { card: Kind; state: Kind };

/** C1, C2, C14: what one certain card is. */
export const cardIs = defineClaim<CardIsArgs>({
  id: 'card-is',
  endings: ['C1', 'C2', 'C14'],
  title: 'the card is',
  phrases: [phrase('the {card:onekind} is {state:onestate}')],
  defaults: {},
  help: 'The chosen card is the ten of clubs, the only face-up card is red, the 10C is face up.',
  caution: 'There must be exactly one such card at the end, or the sentence is false.',
  synonyms: ['your card'],
  attributes: ({ card, state }) => attributesOf(card, state),
  check: ({ card }, cards) => notOneCard(card, cards),
  meaning({ card, state }, exit) {
    return means(and([isOneCard(card, exit), allAre(card, state, allSlots(exit), exit)]));
  },
  examples: [
    { table: '9H 10C(chosen) 4D', sentence: 'The chosen card is the 10C.', holds: true },
    { table: '9H 10C^ 4D', sentence: 'The face-up card is red.', holds: false },
    { table: '9H 10C^ 4D', sentence: 'The 10C is face up.', holds: true },
    { table: '9H(chosen) 10C 4D(chosen)', sentence: 'The chosen card is red.', holds: false },
  ],
});
