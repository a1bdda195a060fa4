import type { Key, Move, Option, View } from '../../moves/move.ts';
import type { Action } from '../../pictures/actions.ts';
import type { Layout } from '../../pictures/layout.ts';
import type { MoveStep } from '../../routine/routine.ts';

/** A step that hands are about to do, and what they would do if all went well. */
export interface Doing {
  readonly step: MoveStep;
  readonly move: Move;
  readonly view: View;
  readonly option: Pick<Option, 'key' | 'actions'>;
}

/** One way in which a slip can go. */
export interface SlipWay {
  readonly key: Key;
  /** What happens, without a full stop: `the 3rd card of the packet is turned over`. */
  readonly words: string;
  readonly actions: readonly Action[];
}

/** A small packet, a step done with the slip, and the packet after it: help and test at once, written like those of moves. */
export interface SlipExample {
  readonly before: string;
  readonly sentence: string;
  /** Choices of the step itself. */
  readonly choices: readonly Key[];
  /** The way it goes wrong, one key for each decision. */
  readonly slip: readonly Key[];
  readonly after: string;
}

interface SlipKind {
  readonly id: string;
  /** Two or three words for lists: `a card turned`. */
  readonly title: string;
  /** What goes wrong, in a sentence or two for a performer. */
  readonly help: string;
  readonly examples: readonly SlipExample[];
}

/** Hands do something else than the step says; none where the step, done so, cannot go wrong this way. */
export interface SlipInstead extends SlipKind {
  readonly when: 'instead';
  /** It goes the same way whatever would have been chosen in the step. */
  readonly whole?: true;
  readonly ways: (doing: Doing) => readonly SlipWay[];
}

/** It happens to the piles that were just handled, once the step is done: one decision after another, each on what lies there by then. */
export interface SlipAfter extends SlipKind {
  readonly when: 'after';
  readonly decisions: readonly ((handled: readonly string[], layout: Layout) => readonly SlipWay[])[];
}

/** A usual mistake, one file each, teaching itself from top to bottom. */
export type Slip = SlipInstead | SlipAfter;
