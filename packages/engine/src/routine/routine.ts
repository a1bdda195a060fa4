import type { Range } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Sentence } from '../claims/sentence.ts';
import type { Key, Move, Phase } from '../moves/move.ts';
import type { Args, NumberRef } from '../phrases/values.ts';

/** One card as it lies at the start. */
export interface Lying {
  /** Index in the routine's list of cards. */
  readonly card: number;
  readonly up: 0 | 1;
  readonly end: 0 | 1;
}

/**
 * What the set-up leaves open; the claim must hold for every way of filling it in. `order`: these places of the pile in any
 * order; `faces`: each of these places face up or down; `attribute`: each of these cards may have any of the values.
 */
export type Freedom =
  | { readonly free: 'order'; readonly pile: string; readonly from: number; readonly count: number }
  | { readonly free: 'faces'; readonly pile: string; readonly from: number; readonly count: number }
  | {
      readonly free: 'attribute';
      readonly attribute: string;
      readonly values: readonly (string | number)[];
      readonly cards: readonly number[];
    };

export interface SetUp {
  /** Piles with their cards, top first. */
  readonly piles: readonly { readonly name: string; readonly cards: readonly Lying[] }[];
  readonly freedoms: readonly Freedom[];
}

export type Chooser = 'spectator' | 'performer';

/** Where a step stands in the note: its number as printed (`1.2`) and the range of its sentence. */
export interface Origin {
  readonly number: string;
  readonly range: Range;
}

/** Some of the options that a move has at one phase; the others are not taken. */
export interface Only {
  readonly phase: Phase;
  readonly keys: readonly Key[];
}

export interface MoveStep extends Origin {
  readonly do: 'move';
  readonly move: string;
  /** Defaults filled in. */
  readonly args: Args;
  readonly who: Chooser;
  /** True when the sentence says that the performer does not get to know the choice. */
  readonly secret: boolean;
  /** True when the sentence says that it is made openly; else it is known only if the move is so by its nature. */
  readonly open?: boolean;
  /** No note says this; it is how a condition on one choice is tried. */
  readonly only?: Only;
  /** No note has this; a move made for one question, such as what a slip leads to, and done instead of the one named. */
  readonly instead?: Move;
}

export type Times =
  | { readonly of: 'any' }
  | { readonly of: 'at least'; readonly n: number }
  | { readonly of: 'exactly'; readonly n: NumberRef };

export interface RepeatStep extends Origin {
  readonly do: 'repeat';
  readonly times: Times;
  readonly who: Chooser;
  readonly body: readonly Step[];
}

export interface EitherStep extends Origin {
  readonly do: 'either';
  readonly who: Chooser;
  readonly branches: readonly (readonly Step[])[];
}

/**
 * The body for each pile in turn: numbers 1 to the greatest there when the step begins, skipping those without cards when their
 * turn comes. Inside, `that pile` is `{ stem, n: { var: counter } }`.
 */
export interface EachStep extends Origin {
  readonly do: 'each';
  /** `pile` for `pile 1`, `pile 2`, ... */
  readonly stem: string;
  /** Name of the hidden number that counts through the piles. */
  readonly counter: string;
  readonly body: readonly Step[];
}

/** A test on a number that was named. */
export interface NumberTest {
  readonly test: 'number';
  readonly number: string;
  readonly is: 'equal' | 'at least' | 'at most' | 'even' | 'odd';
  readonly n: number;
}

export interface IfStep extends Origin {
  readonly do: 'if';
  readonly when: NumberTest;
  readonly then: readonly Step[];
  readonly otherwise: readonly Step[];
}

export type Step = MoveStep | RepeatStep | EitherStep | EachStep | IfStep;

export type { Sentence };

export interface Ending {
  /** As the note writes it, for people. */
  readonly text: string;
  readonly range: Range;
  readonly sentence: Sentence;
  /** Where the sentence need not always hold, but with so great a chance at least. */
  readonly chance?: ChanceAsked;
}

/** `n` in `d`: 0.8 is 8 in 10. */
export interface ChanceAsked {
  readonly n: number;
  readonly d: number;
}

/** A routine ready to be explored: plain data, every step keeping its place in the note. */
export interface Routine {
  readonly title: string;
  readonly cards: readonly Card[];
  readonly setUp: SetUp;
  readonly steps: readonly Step[];
  readonly endings: readonly Ending[];
}
