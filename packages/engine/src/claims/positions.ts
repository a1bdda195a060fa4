import type { Kind } from '../phrases/values.ts';
import type { Exit } from './claim.ts';
import { and, type Formula } from './formula.ts';
import { count, isOneCard } from './kinds.ts';
import { equals, minus, plus, times, type Sum } from './sums.ts';

/** The place of the one card of a kind, counted from 1, as a sum: each place times whether the card is there. */
export function positionOf(card: Kind, slots: readonly number[], exit: Exit): Sum {
  return plus(...slots.map((slot, i) => times(count(card, [slot], exit), i + 1)));
}

/** There is one card of the kind and it lies in these slots. */
export function isOneIn(card: Kind, slots: readonly number[], exit: Exit): Formula {
  return and([isOneCard(card, exit), equals(count(card, slots, exit), 1, 2)]);
}

/**
 * Going round, the one card lies so many places below the other: in each slot it is there exactly when the other is so many
 * places higher. One equation modulo the number of cards would say it too, but that is a field only for primes.
 */
export function isBelowGoingRound(
  card: Kind,
  other: Kind,
  by: number,
  slots: readonly number[],
  exit: Exit,
): Formula {
  const size = slots.length;
  return and(
    slots.map((slot, i) => {
      const above = slots[(((i - by) % size) + size) % size];
      return equals(minus(count(card, [slot], exit), count(other, [above], exit)), 0, 2);
    }),
  );
}
