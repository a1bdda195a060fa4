import { cardsIn } from '../pictures/layout.ts';
import { boundsOf } from './bounds.ts';
import type { Exit } from './claim.ts';
import { equal, type Formula, type Measure, type Term } from './formula.ts';

/** A whole number that depends on the table: terms and a constant. */
export interface Sum {
  readonly terms: readonly Term[];
  readonly constant: number;
}

export const ZERO: Sum = { terms: [], constant: 0 };

/** The sum of sums; terms of one measure in one slot are taken together. */
export function plus(...sums: readonly Sum[]): Sum {
  const terms = new Map<string, Term>();
  let constant = 0;
  for (const sum of sums) {
    constant += sum.constant;
    for (const term of sum.terms) {
      const key = `${term.slot} ${term.measure.id}`;
      const coef = (terms.get(key)?.coef ?? 0) + term.coef;
      if (coef === 0) terms.delete(key);
      else terms.set(key, { ...term, coef });
    }
  }
  return { terms: [...terms.values()], constant };
}

export function times(sum: Sum, by: number): Sum {
  if (by === 0) return ZERO;
  return { terms: sum.terms.map((term) => ({ ...term, coef: term.coef * by })), constant: sum.constant * by };
}

export function minus(a: Sum, b: Sum): Sum {
  return plus(a, times(b, -1));
}

/** What a measure reads in some slots together; settled at once where sizes and the cards alone decide it. */
export function total(measure: Measure, slots: readonly number[], exit: Exit): Sum {
  const [least, most] = boundsOf(measure, exit.cards);
  if (least === most) return { terms: [], constant: least * slots.length };
  const whole = slots.length === cardsIn(exit.layout) ? ofAllCards(measure, exit) : null;
  if (whole !== null) return { terms: [], constant: whole };
  return { terms: slots.map((slot) => ({ slot, coef: 1, measure })), constant: 0 };
}

/** What a measure reads on all cards together, or null where bits or open attributes have a say. */
function ofAllCards(measure: Measure, exit: Exit): number | null {
  if (measure.bits.length > 0) return null;
  const byCard = new Map<number, number>();
  for (const card of exit.cards) {
    const value = measure.of(card, () => 0);
    if ((byCard.get(card.id) ?? value) !== value) return null;
    byCard.set(card.id, value);
  }
  return [...byCard.values()].reduce((a, b) => a + b, 0);
}

/** The sum is `value`, in whole numbers or modulo `mod`. */
export function equals(sum: Sum, value: number, mod?: number): Formula {
  const wanted = value - sum.constant;
  if (sum.terms.length > 0) return equal(sum.terms, wanted, mod);
  return { is: 'known', holds: mod === undefined ? wanted === 0 : wanted % mod === 0 };
}

/** The sum is at least `least` and at most `most`, where given. */
export function between(sum: Sum, least: number | undefined, most: number | undefined): Formula {
  const { terms, constant } = sum;
  if (least !== undefined && least === most) return equals(sum, least);
  if (terms.length === 0)
    return { is: 'known', holds: constant >= (least ?? -Infinity) && constant <= (most ?? Infinity) };
  return {
    is: 'order',
    terms,
    ...(least === undefined ? {} : { least: least - constant }),
    ...(most === undefined ? {} : { most: most - constant }),
  };
}
