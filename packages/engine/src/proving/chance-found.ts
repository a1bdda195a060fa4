import type { Trouble } from '../base/diagnostic.ts';
import type { Rational } from '../base/rational.ts';

/**
 * How likely a sentence is when every choice is made at random, each move by its own weights: exact where every way could be
 * followed, else an estimate from seeded trials with its 95 % interval, or no chance at all and why.
 */
export type Chance =
  | { readonly kind: 'exact'; readonly value: Rational }
  | {
      readonly kind: 'estimate';
      readonly hits: number;
      readonly runs: number;
      readonly seed: number;
      readonly low: number;
      readonly high: number;
    }
  | { readonly kind: 'none'; readonly why: Trouble };
