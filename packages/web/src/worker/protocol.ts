import type { Report, Result, SentenceMoments, Trouble } from '@foregone/engine';

/** What the shelf files a note under; see `NoteSummary` for the part that is kept. */
export interface Digest {
  readonly cards: number | null;
  readonly minutes: number | null;
  /** Titles of the moves in the working, each once. */
  readonly moves: readonly string[];
}

/** Questions to the engine, each with its answer. To ask something new, add a line here and its answer in `answer.ts`. */
export interface Questions {
  readonly check: { readonly report: Report; readonly digest: Digest };
  /** Have and need at every step, or why they cannot be said. */
  readonly moments: Result<readonly SentenceMoments[], Trouble>;
}

export type QuestionName = keyof Questions;

/** Counted and timed limits of one question. */
export interface Bounds {
  /** Milliseconds until the engine is told to stop and to say what it knows. */
  readonly time: number;
}

export interface Request {
  readonly id: number;
  readonly ask: QuestionName;
  readonly text: string;
  readonly bounds: Bounds;
}

export type Reply =
  | { readonly id: number; readonly kind: 'progress'; readonly spent: number }
  | { readonly id: number; readonly kind: 'answer'; readonly answer: Questions[QuestionName] }
  /** A fault of ours, never of the note. */
  | { readonly id: number; readonly kind: 'fault'; readonly message: string };
