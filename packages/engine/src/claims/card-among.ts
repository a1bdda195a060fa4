import { phrase } from '../phrases/phrase.ts';
import type { Kind, NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf, count, isOneCard, notOneCard } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';

type CardAmongArgs = { card: Kind; end: string; k: NumberRef; pile: PileRef };

/** C1, C15: one certain card is one of the first from an end. */
export const cardAmong = defineClaim<CardAmongArgs>({
  id: 'card-among',
  endings: ['C1', 'C15'],
  title: 'the card is one of these',
  phrases: [
    phrase(
      'the {card:onekind} is (among|one of) the {end=top|bottom} {k:number} cards [(of|in) {pile:pile}]',
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'The chosen card is one of the top so many cards, or of the bottom ones; which of them is open.',
  caution: 'There must be exactly one such card and so many cards in the pile, or the sentence is false.',
  synonyms: ['one of these'],
  attributes: ({ card }) => attributesOf(card),
  check: ({ card }, cards) => notOneCard(card, cards),
  meaning({ card, end, k, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const [all, size] = [slots.value, numberAt(k, exit)];
    if (size < 1 || size > all.length) return means(FALSE);
    const these = end === 'top' ? all.slice(0, size) : all.slice(all.length - size);
    // One card on the table: the number among these is 0 or 1.
    return means(and([isOneCard(card, exit), equals(count(card, these, exit), 1, 2)]));
  },
  examples: [
    { table: '9H 10C(chosen) 4D 2S', sentence: 'The chosen card is among the top 2 cards.', holds: true },
    {
      table: 'pile 1: 9H 10C 4D; pile 2: 2S',
      sentence: 'The 9H is one of the bottom 2 cards of pile 1.',
      holds: false,
    },
  ],
});
