import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf, isKind, isOneCard, notOneCard } from './kinds.ts';
import { slotsIn } from './piles.ts';

type OnlyCardArgs = { card: Kind; pile: PileRef };

/** C1: the one card left is a certain card. */
export const onlyCard = defineClaim<OnlyCardArgs>({
  id: 'only-card',
  endings: ['C1'],
  title: 'the only card left',
  phrases: [
    phrase('the {card:onekind} is the only card [left] in {pile:pile}'),
    phrase('the {card:onekind} is the (only card|one|card) left [in {pile:pile}]'),
    phrase('the only card [left] in {pile:pile} is the {card:onekind}'),
    phrase('the (only card|card) left [in {pile:pile}] is the {card:onekind}'),
  ],
  defaults: { pile: 'packet' },
  help: 'One card is left in the pile, and it is the chosen card or the card named.',
  caution: 'Without a pile named, the packet is meant.',
  synonyms: ['the one left'],
  attributes: ({ card }) => attributesOf(card),
  check: ({ card }, cards) => notOneCard(card, cards),
  meaning({ card, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length !== 1) return means(FALSE);
    return means(and([isOneCard(card, exit), isKind(card, slots.value[0], exit)]));
  },
  examples: [
    {
      table: 'packet: r(chosen); table: b r',
      sentence: 'The chosen card is the only card left.',
      holds: true,
    },
    { table: 'packet: 10C; table: 9H 4D', sentence: 'The only card in the packet is the 10C.', holds: true },
    { table: 'packet: 10C 9H; table: 4D', sentence: 'The 10C is the only card in the packet.', holds: false },
  ],
});
