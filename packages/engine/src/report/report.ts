import type { Facts, Fix, Range, Severity } from '../base/diagnostic.ts';
import type { Method, Trials, VerdictName } from '../proving/decision.ts';
import type { Coverage } from './coverage.ts';
import type { Key } from '../moves/move.ts';
import type { LostData } from './lost.ts';
import type { Performance } from './performance.ts';

/** What may be said of a note, the worst first: a note's verdict is the worst of its sentences'. */
export const REPORT_VERDICTS = ['refuted', 'not understood', 'undecided', 'empty', 'proved'] as const;
export type ReportVerdict = (typeof REPORT_VERDICTS)[number];

/** A diagnostic with its place for people and its words. */
export interface DiagnosticData {
  readonly code: string;
  readonly severity: Severity;
  readonly range: Range;
  /** Both from 1. Columns count UTF-16 code units. */
  readonly line: number;
  readonly column: number;
  readonly words: string;
  /** What to do about it; empty where the words say it all. */
  readonly remedy: string;
  readonly facts: Facts;
  readonly fixes: readonly Fix[];
}

/** An ambiguous word of the note and how it was taken. */
export interface ReadingData {
  /** The step or the line of the set-up it stands in. */
  readonly number: string;
  readonly sentence: string;
  readonly range: Range;
  readonly word: string;
  readonly taken: string;
  /** How the note would ask for the other reading. */
  readonly other: string;
  /** True when the author has confirmed it in the head. */
  readonly confirmed: boolean;
}

/** A performance after which a sentence is false, or which cannot go on. */
export interface FailureData {
  readonly performance: Performance;
  /** One for each moment that leaves a choice; the command line and the table replay them. */
  readonly choices: readonly Key[];
  /** True when no performance that fails costs less. */
  readonly shortest: boolean;
  /** Why it cannot go on; empty when it came to its end. */
  readonly stuck: string;
  /** How the sentence stands on the last table; empty when the performance did not come to its end. */
  readonly shows: string;
  /** The step at which it goes wrong. */
  readonly lost: LostData;
}

/** At a step, after these public choices and sights: this one. */
export interface RuleData {
  readonly step: string;
  readonly when: readonly string[];
  readonly key: Key;
  /** The choice in words. */
  readonly choice: string;
}

export interface SentenceReport {
  readonly text: string;
  readonly range: Range;
  readonly verdict: VerdictName;
  readonly method: Method;
  /** The method in words. */
  readonly by: string;
  /** One sentence. */
  readonly why: string;
  readonly failure: FailureData | null;
  readonly trials: Trials | null;
  /** How likely it is, in words, where the sentence asks for a chance. */
  readonly chance: string | null;
  /** What the performer does where the working leaves it open; null where nothing is left to the performer. */
  readonly rule: readonly RuleData[] | null;
  readonly tables: number;
  readonly equations: number;
}

/** Everything that is said of a note, as plain data. */
export interface Report {
  readonly title: string;
  readonly verdict: ReportVerdict;
  /** One sentence. */
  readonly summary: string;
  readonly diagnostics: readonly DiagnosticData[];
  readonly readings: readonly ReadingData[];
  readonly sentences: readonly SentenceReport[];
  /** Null when the note was not understood. */
  readonly coverage: Coverage | null;
}
