import type { Trouble } from '../../base/diagnostic.ts';
import type { Hands, Key } from '../../moves/move.ts';
import type { Sentences } from '../altering/narrow.ts';

/** What may be said of a mix put in: safe whatever is chosen in it, for some of its choices, for none; or not settled. */
export type FreedomVerdict = 'safe' | 'some' | 'unsafe' | 'undecided';

/** One way of doing a mix, or one first choice in it. */
export interface ChoiceData {
  /** In the words of the moves. */
  readonly words: string;
  /** What is taken wherever there is more than one option. */
  readonly keys: readonly Key[];
  readonly isSafe: boolean;
}

/** Which choices of a mix are safe. */
export interface WhichChoices {
  readonly safe: number;
  readonly of: number;
  /** `even numbers only`, or the safe choices one by one where they are few. */
  readonly words: string;
  /** True when these are choices at the first decision, whatever is chosen after it; else whole ways of doing the mix. */
  readonly first: boolean;
  /** False where the place recurs and each safe choice is safe when it is taken every time, but not mixed with the others. */
  readonly together: boolean;
  /** All choices, at most 200; empty where there are more. */
  readonly choices: readonly ChoiceData[];
  /** The sentence that leaves just the safe choices open; null where no sentence of the move does. */
  readonly narrowed: Sentences | null;
}

/** What was found of one mix. */
export interface Judged {
  readonly verdict: FreedomVerdict;
  /** Only for `some`. */
  readonly which: WhichChoices | null;
  /** Only for `undecided`. */
  readonly reason: Trouble | null;
}

/** One mix that could be put in, and whether it may. */
export interface FreedomRow extends Sentences, Judged {
  readonly hands: Hands;
}

export const SAFE: Judged = { verdict: 'safe', which: null, reason: null };
export const UNSAFE: Judged = { verdict: 'unsafe', which: null, reason: null };

export function unsettled(reason: Trouble): Judged {
  return { verdict: 'undecided', which: null, reason };
}

/** Choices that are listed one by one in the data. */
export const MOST_LISTED = 200;
