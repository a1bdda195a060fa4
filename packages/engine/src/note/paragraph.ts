import type { Range } from '../base/diagnostic.ts';
import type { Head } from './blocks.ts';
import type { Context } from './clause.ts';
import type { Outcome } from './outcome.ts';

/** A block whose steps are still to come, in the list under its sentence. */
export interface Open {
  /** Null where it was not understood. */
  readonly head: Head | null;
  readonly range: Range;
  /** What its steps may refer to. */
  readonly inner: Context;
  /** The block with its steps, or the branches of an `either`. */
  readonly close: (body: readonly Outcome[]) => Outcome;
}

/** A paragraph, or part of one: what it says, and the block it leaves open at its end. */
export interface Paragraph {
  readonly outcome: Outcome;
  readonly open: Open | null;
}
