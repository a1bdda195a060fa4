import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf, count, isOneCard, notOneCard } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals, minus } from './sums.ts';
import { eitherAt } from './two-classes.ts';

type OnlyOtherWayArgs = { card: Kind; bit: 'up' | 'end'; pile?: PileRef };

/** C2: one card, and it alone, faces the other way. */
export const onlyOtherWay = defineClaim<OnlyOtherWayArgs>({
  id: 'only-other-way',
  endings: ['C2'],
  title: 'the only card the other way',
  phrases: [
    phrase('the {card:onekind} is the only card [(in|of) {pile:pile}] facing the other way', { bit: 'up' }),
    phrase('only the {card:onekind} [in {pile:pile}] faces the other way', { bit: 'up' }),
    phrase('the {card:onekind} is the only card [(in|of) {pile:pile}] that faces the other way', {
      bit: 'up',
    }),
    phrase('the {card:onekind} is the only card [(in|of) {pile:pile}] pointing the other way', {
      bit: 'end',
    }),
    phrase('only the {card:onekind} [in {pile:pile}] points the other way', { bit: 'end' }),
  ],
  defaults: {},
  help: 'This card faces one way and every other card the other way. Pointing is the same for the ends of the cards.',
  caution: 'It is open which way the others face. With two cards either is the only one.',
  synonyms: ['only reversed card', 'the odd one out'],
  attributes: ({ card }) => attributesOf(card),
  check: ({ card }, cards) => notOneCard(card, cards),
  meaning({ card, bit, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    const way = { tests: [{ test: 'bit', bit } as const] };
    const odd = slots.value.map((slot) => eitherAt(way, card, slot, exit));
    // The card is there, and facing-or-being-it is the same everywhere: that is what makes it the only one.
    const isInside = equals(count(card, slots.value, exit), 1, 2);
    return means(
      and([
        isOneCard(card, exit),
        isInside,
        ...odd.slice(1).map((sum, i) => equals(minus(sum, odd[i]), 0, 2)),
      ]),
    );
  },
  examples: [
    {
      table: 'r b^(chosen) r',
      sentence: 'The chosen card is the only card facing the other way.',
      holds: true,
    },
    {
      table: 'r^ b(chosen) r^',
      sentence: 'The chosen card is the only card facing the other way.',
      holds: true,
    },
    { table: 'r^ b(chosen) r', sentence: 'Only the chosen card faces the other way.', holds: false },
    { table: '9H 10C^ 4D', sentence: 'The 10C is the only card facing the other way.', holds: true },
    { table: "r b'(chosen) r", sentence: 'Only the chosen card points the other way.', holds: true },
  ],
});
