import type { Kind } from '../phrases/values.ts';
import type { Exit } from './claim.ts';
import { and, type Formula } from './formula.ts';
import { count, isOneCard } from './kinds.ts';
import { equals, plus, times, type Sum } from './sums.ts';

/** The place of the one card of a kind, counted from 1, as a sum: each place times whether the card is there. */
export function positionOf(card: Kind, slots: readonly number[], exit: Exit): Sum {
  return plus(...slots.map((slot, i) => times(count(card, [slot], exit), i + 1)));
}

/** There is one card of the kind and it lies in these slots. */
export function isOneIn(card: Kind, slots: readonly number[], exit: Exit): Formula {
  return and([isOneCard(card, exit), equals(count(card, slots, exit), 1, 2)]);
}
