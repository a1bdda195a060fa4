import type { Card } from '../../cards/card.ts';

/** Cards that no equation tells apart. */
export interface CardClass {
  readonly cards: readonly Card[];
  /** For each line, for each slot, what such a card there adds. */
  readonly shares: readonly (readonly number[])[];
}
