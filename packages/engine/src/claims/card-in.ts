import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf, count, isOneCard, notOneCard } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';

type CardInArgs = { card: Kind; pile: PileRef };

/** C1: in which pile one certain card is. */
export const cardIn = defineClaim<CardInArgs>({
  id: 'card-in',
  endings: ['C1'],
  title: 'the card is in a pile',
  phrases: [phrase('the {card:onekind} is [still] in {pile:pile}')],
  defaults: {},
  help: 'The chosen card, the ten of clubs, the only red ace lies in this pile, anywhere.',
  caution: 'There must be exactly one such card at the end, or the sentence is false.',
  synonyms: ['in your hand'],
  attributes: ({ card }) => attributesOf(card),
  check: ({ card }, cards) => notOneCard(card, cards),
  meaning({ card, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    // One card on the table: the number in the pile is 0 or 1.
    return means(and([isOneCard(card, exit), equals(count(card, slots.value, exit), 1, 2)]));
  },
  examples: [
    { table: 'pile 1: 9H 10C; pile 2: 4D', sentence: 'The 10C is in pile 1.', holds: true },
    { table: 'pile 1: r b; pile 2: r(chosen)', sentence: 'The chosen card is in pile 1.', holds: false },
  ],
});
