import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE, or } from './formula.ts';
import { attributesOf, notOneCard } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { isOneIn, positionOf } from './positions.ts';
import { equals, minus } from './sums.ts';

type NextToArgs = { a: Kind; b: Kind; pile: PileRef };

/** C18: two cards are neighbours. */
export const nextTo = defineClaim<NextToArgs>({
  id: 'next-to',
  endings: ['C18'],
  title: 'next to the key',
  phrases: [phrase('the {a:onekind} is next to the {b:onekind} [in {pile:pile}]')],
  defaults: { pile: 'packet' },
  help: 'The chosen card lies directly above or directly below the other.',
  caution:
    'Both cards must be in the pile. Top and bottom are no neighbours. Say above or below where you know it: that is one equation, this needs an exact search.',
  synonyms: ['neighbour'],
  attributes: ({ a, b }) => attributesOf(a, b),
  check: ({ a, b }, cards) => [...notOneCard(a, cards), ...notOneCard(b, cards)],
  meaning({ a, b, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const all = slots.value;
    if (all.length === 0) return means(FALSE);
    const apart = minus(positionOf(a, all, exit), positionOf(b, all, exit));
    return means(
      and([isOneIn(a, all, exit), isOneIn(b, all, exit), or([equals(apart, 1), equals(apart, -1)])]),
    );
  },
  examples: [
    { table: '9H(chosen) 10C 4D', sentence: 'The chosen card is next to the 10C.', holds: true },
    { table: '9H(chosen) 10C 4D', sentence: 'The chosen card is next to the 4D.', holds: false },
  ],
});
