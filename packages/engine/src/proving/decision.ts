import type { Trouble } from '../base/diagnostic.ts';
import type { Ending } from '../routine/routine.ts';
import type { Graph } from '../routine/graph.ts';
import type { Way } from './exact.ts';
import type { Chance } from './chance-found.ts';
import type { WrittenRule } from './rule.ts';
import type { Kernel } from './kernel.ts';
import type { Need } from './need.ts';
import type { Problem } from './problem.ts';
import type { Region } from './region.ts';
import type { Starts } from '../routine/starts.ts';

export const VERDICTS = ['refuted', 'undecided', 'empty', 'proved'] as const;
export type VerdictName = (typeof VERDICTS)[number];

/** How a sentence was settled: by sizes alone, by linear algebra, by the complete search, or by search up to the last look. */
export type Method = 'sizes' | 'linear' | 'exact' | 'exact then linear' | 'rule' | 'chance' | 'trials';

/** A real performance after which the sentence is false, or which gets stuck. */
export interface Failure {
  readonly way: Way;
  readonly stuck: Trouble | undefined;
  /** False when it was only met by chance, so that a shorter one may exist. */
  readonly shortest: boolean;
}

/** Attributes and bits that an exact search tells cards apart by. */
export interface Reads {
  readonly attributes: readonly string[];
  readonly bits: readonly string[];
}

/** Equations solved for one sentence, with all that was needed at every location. */
export interface Solved {
  readonly problem: Problem;
  readonly kernel: Kernel;
  readonly need: Need;
}

/** What was tried by chance where the search did not finish. */
export interface Trials {
  readonly runs: number;
  readonly failures: number;
  readonly seed: number;
}

export interface SentenceDecision {
  readonly ending: Ending;
  readonly verdict: VerdictName;
  readonly method: Method;
  readonly failure: Failure | undefined;
  readonly solved: readonly Solved[];
  /** What an exact search told cards apart by. */
  readonly reads: Reads | undefined;
  /** Tables an exact search kept; 0 where there was none. */
  readonly states: number;
  /** Equations kept by linear algebra. */
  readonly rows: number;
  readonly trials: Trials | undefined;
  /** What the performer does, where the working leaves choices to the performer and a rule for them works. */
  readonly rule: WrittenRule | undefined;
  /** How likely it is, where the sentence asks for a chance. */
  readonly chance: Chance | undefined;
  /** Why the sentence is empty or undecided. */
  readonly reason: Trouble | undefined;
}

export interface Decision {
  readonly graph: Graph;
  readonly starts: Starts;
  /** The part of the graph that linear algebra can treat; undefined when the budget ended before it was made. */
  readonly region: Region | undefined;
  readonly sentences: readonly SentenceDecision[];
  /** Worst of all sentences: refuted, then undecided, then empty, then proved; empty when there is none. */
  readonly verdict: VerdictName;
  /** Sentences that have no meaning for these cards and piles: the note is not understood. */
  readonly troubles: readonly { readonly ending: Ending; readonly trouble: Trouble }[];
  /** For every sentence in order, what it leaves unsaid: cards left over after the last block. */
  readonly asides: readonly (readonly Trouble[])[];
  readonly performances: bigint | null;
}

export function worst(verdicts: readonly VerdictName[]): VerdictName {
  return VERDICTS.find((verdict) => verdicts.includes(verdict)) ?? 'empty';
}
