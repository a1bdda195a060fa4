import type { Range, Trouble } from '../base/diagnostic.ts';
import type { FreedomVerdict, WhichChoices } from '../insight/freedom/row.ts';
import type { Alteration } from '../insight/freedom/alterations.ts';
import type { Reach } from '../insight/freedom/freedom.ts';
import type { Hands } from '../moves/move.ts';
import type { VerdictName } from '../proving/decision.ts';

/** A place of the working where something can be put in. */
export interface FreedomPlace {
  /** `3`, `2.1` before that step; `end`, `end of 2`, `end of 2, way 1` at the end of a list of steps. */
  readonly id: string;
  /** `before step 3`, `at the end of each round of step 1`. */
  readonly words: string;
  /** The step it stands before: its number, sentence and range in the note; empty, empty and null at the end of a list. */
  readonly number: string;
  readonly sentence: string;
  readonly range: Range | null;
  /** Only at a place that is reached is there anything to say. */
  readonly reach: Reach;
}

/** One thing that could be done at a place, and whether the ending stays certain. */
export interface FreedomRowData {
  /** One sentence, or several with semicolons, as the note would write them. Unique at its place: what `failure` and `textWith` ask for. */
  readonly text: string;
  /** What hands do first: rows come grouped by it, in the order cut, mix, deal, gather, turn, order, hand over. */
  readonly hands: Hands;
  /** `safe` whatever is chosen in it; `some`: for some of its choices; `unsafe`: for none worth doing; `undecided`: not settled. */
  readonly status: FreedomVerdict;
  /** For `some` the safe choices (`even numbers only`); for `undecided` why; else empty. */
  readonly words: string;
  /** Only for `some`: how many, which, and the sentence that leaves just these open. */
  readonly choices: FreedomChoices | null;
}

export interface FreedomChoices extends Omit<WhichChoices, 'narrowed'> {
  /** `Cut an even number of cards.`: safe as it stands; null where no sentence says it. A row of its own for `failure` and `textWith`. */
  readonly narrowed: string | null;
}

/** Everything there is to say of one place. */
export interface FreedomReport {
  readonly place: FreedomPlace;
  /** Sentences of the ending that stay certain with what is safe. */
  readonly sentences: readonly string[];
  /** Sentences that are not proved: nothing is said of them. */
  readonly leftOut: readonly string[];
  readonly rows: readonly FreedomRowData[];
  /** Why the list ends early; null where it is complete. */
  readonly ended: Trouble | null;
}

/** A change to one step: its freest version that keeps the ending certain, left out, repeated at will, given to the spectator. */
export interface AlterationData {
  /** The step's number in the note. */
  readonly number: string;
  readonly kind: Alteration['kind'];
  /** The step as it would be, in a sentence; empty where it is left out. */
  readonly text: string;
  /** The verdict on the routine with the change: `proved` is safe. */
  readonly verdict: VerdictName;
}
