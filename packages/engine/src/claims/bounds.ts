import type { Card } from '../cards/card.ts';
import type { Measure, Term } from './formula.ts';

/** Least and greatest value. */
export type Bounds = readonly [number, number];

/** What a measure reads on every card under every setting of its bits: the first card's settings, then the next card's. */
export function profileOf(measure: Measure, cards: readonly Card[]): number[] {
  const { bits } = measure;
  return cards.flatMap((card) =>
    Array.from({ length: 1 << bits.length }, (_, setting) =>
      measure.of(card, (bit) => (setting >> bits.indexOf(bit)) & 1),
    ),
  );
}

const known = new WeakMap<readonly Card[], Map<string, Bounds>>();

export function boundsOf(measure: Measure, cards: readonly Card[]): Bounds {
  let byId = known.get(cards);
  if (byId === undefined) known.set(cards, (byId = new Map<string, Bounds>()));
  let bounds = byId.get(measure.id);
  if (bounds === undefined) {
    const profile = profileOf(measure, cards);
    bounds = profile.length === 0 ? [0, 0] : [Math.min(...profile), Math.max(...profile)];
    byId.set(measure.id, bounds);
  }
  return bounds;
}

/** Bounds of a sum, each term taken by itself. */
export function boundsOfTerms(terms: readonly Term[], cards: readonly Card[]): Bounds {
  let [low, high] = [0, 0];
  for (const { coef, measure } of terms) {
    const [least, most] = boundsOf(measure, cards);
    low += coef > 0 ? coef * least : coef * most;
    high += coef > 0 ? coef * most : coef * least;
  }
  return [low, high];
}
