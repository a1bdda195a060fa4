import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf, count, notOneCard } from './kinds.ts';
import { notNumbers } from './numeric-check.ts';
import { slotsIn } from './piles.ts';
import { isOneIn } from './positions.ts';
import { equals, minus, times } from './sums.ts';
import { totalOf } from './totals.ts';

type ValuePlaceArgs = { card: Kind; pile: PileRef };

/** C13: a card lies at the place its value tells. */
export const valuePlace = defineClaim<ValuePlaceArgs>({
  id: 'value-place',
  endings: ['C13'],
  title: 'at the place of its value',
  phrases: [phrase('the {card:onekind} (lies|is) at the place of its value [in {pile:pile}]')],
  defaults: { pile: 'packet' },
  help: 'A chosen five lies fifth from the top, a chosen queen twelfth.',
  caution: 'There must be exactly one such card and it must be in the pile, or the sentence is false.',
  synonyms: ['its value tells its place'],
  attributes: ({ card }) => [...attributesOf(card), 'value'],
  check: ({ card }, cards) => [...notOneCard(card, cards), ...notNumbers('value', cards)],
  meaning({ card, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    // Where the card is not, both sides are 0.
    const fits = slots.value.map((slot, i) =>
      equals(minus(totalOf('value', card, [slot], exit), times(count(card, [slot], exit), i + 1)), 0),
    );
    return means(and([isOneIn(card, slots.value, exit), ...fits]));
  },
  examples: [
    { table: '9H 2C(chosen) QD', sentence: 'The chosen card lies at the place of its value.', holds: true },
    { table: '9H 2C QD(chosen)', sentence: 'The chosen card lies at the place of its value.', holds: false },
  ],
});
