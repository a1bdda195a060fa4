import type { Card } from '../cards/card.ts';
import type { Kind } from '../phrases/values.ts';
import type { Exit } from './claim.ts';
import { count } from './kinds.ts';
import { xor } from './measures.ts';
import { plus, total, type Sum } from './sums.ts';

/**
 * Modulo 2: whether the card in a slot is of exactly one of two kinds. Where both are plain measures they become one, which
 * handling then carries as one bit.
 */
export function eitherAt(a: Kind, b: Kind, slot: number, exit: Exit): Sum {
  const [one, two] = [count(a, [slot], exit), count(b, [slot], exit)];
  const [x, y] = [one.terms[0]?.measure, two.terms[0]?.measure];
  if (x === undefined || y === undefined) return plus(one, two);
  const joined = total(x.id < y.id ? xor(x, y) : xor(y, x), [slot], exit);
  return plus(joined, { terms: [], constant: one.constant + two.constant });
}

/** Every card is of one of the two kinds and none of both, however it lies. */
export function arePartition(a: Kind, b: Kind, cards: readonly Card[]): boolean {
  const isFixed = [...a.tests, ...b.tests].every((test) => test.test !== 'bit');
  const exitless = { layout: { names: [], sizes: [] }, numbers: {}, cards, start: {} };
  const isOf = (kind: Kind, card: Card): boolean => {
    const { terms, constant } = count(kind, [0], exitless);
    return terms.reduce((sum, { coef, measure }) => sum + coef * measure.of(card, () => 0), constant) === 1;
  };
  return isFixed && cards.every((card) => isOf(a, card) !== isOf(b, card));
}
