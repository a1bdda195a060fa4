import type { Amount } from '../phrases/values.ts';
import { numberAt, type Exit } from './claim.ts';
import { TRUE, type Formula } from './formula.ts';
import { between, equals, minus, times, type Sum } from './sums.ts';

/** A number of cards is as an amount says; `whole` is what `half` is half of. */
export function stated(amount: Amount, sum: Sum, whole: () => Sum, exit: Exit): Formula {
  switch (amount.of) {
    case 'any':
      return TRUE;
    case 'exactly':
      return equals(sum, numberAt(amount.n, exit));
    case 'range':
      return between(sum, numberAt(amount.from, exit), numberAt(amount.to, exit));
    case 'at least':
      return between(sum, numberAt(amount.n, exit), undefined);
    case 'at most':
      return between(sum, undefined, numberAt(amount.n, exit));
    case 'multiple':
      return amount.k === 1 ? TRUE : equals(sum, amount.plus, amount.k);
    case 'half':
      return equals(minus(times(sum, 2), whole()), 0);
  }
}

/** Exactly so many, as the blank of an amount reads it. */
export function exactly(n: number): Amount {
  return { of: 'exactly', n };
}
