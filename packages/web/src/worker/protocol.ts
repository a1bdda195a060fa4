import type {
  AlterationData,
  FailureData,
  FreedomRowData,
  Performance,
  Range,
  Report,
  ReportVerdict,
  Result,
  SentenceMoments,
  SlipRow,
  Trouble,
} from '@foregone/engine';

/** What the shelf files a note under; see `NoteSummary` for the part that is kept. */
export interface Digest {
  readonly cards: number | null;
  readonly minutes: number | null;
  /** Titles of the moves in the working, each once. */
  readonly moves: readonly string[];
}

/** A sentence of a note that was understood, with its place. */
export interface Understood {
  readonly kind: 'set-up' | 'step' | 'ending';
  readonly range: Range;
  /** The step's number; empty outside the working. */
  readonly number: string;
  /** The move it says; empty for a block and outside the working. */
  readonly move: string;
  readonly who: 'spectator' | 'performer';
}

/** How the sentences of a note were read, before anything is proved. */
export interface Reading {
  readonly understood: readonly Understood[];
  /** Its verdict is not settled; its diagnostics are. */
  readonly report: Report;
}

/** Who chooses at a step, and among how many ways at its first decision. */
export interface ChoiceAt {
  readonly number: string;
  readonly who: 'spectator' | 'performer';
  readonly ways: number;
}

/** One performance that comes by every step it can come by, and what was left open on the way. */
export interface OnePerformance {
  readonly performance: Performance;
  readonly choices: readonly ChoiceAt[];
}

/** Questions about a note that are asked when somebody wants to know. */
export const TOPICS = ['set-up', 'sizes', 'mixing'] as const;
export type Topic = (typeof TOPICS)[number];

/** What there is to say of a topic: a paragraph first, then what it rests on. */
export interface Insight {
  readonly words: string;
  readonly lines: readonly string[];
}

/** Questions to the engine, each with its answer. To ask something new, add a line here and its answer in `answer.ts`. */
export interface Questions {
  readonly check: { readonly report: Report; readonly digest: Digest };
  /** Have and need at every step, or why they cannot be said. */
  readonly moments: Result<readonly SentenceMoments[], Trouble>;
  /** How the sentences are read; soon answered, whatever the note. */
  readonly read: Reading;
  /** A performance chosen by the number it is asked about; null where the note was not understood. */
  readonly play: OnePerformance | null;
  /** The note with its sentences as they are printed. */
  readonly format: string;
  /** The verdict of each of the texts it is asked about, a JSON list, told one by one; each is given little work only. */
  readonly verdicts: readonly ReportVerdict[];
  /** Names of the structures that its cards keep or need somewhere on the way, each once. */
  readonly structures: readonly string[];
  /** What else could be done at the place it is asked about: told row by row; the answer says why the rows end early, if they do. */
  readonly freedom: string;
  /** What else the step it is asked about could be: told one by one. */
  readonly changes: string;
  /** How the ending fails with a row put in; asked about a place and the row's text, a JSON list. */
  readonly breaking: FailureData | null;
  /** The topic it is asked about. */
  readonly insight: Insight;
  /** What follows from the usual slips: told one by one; the answer says why nothing is said, if so. */
  readonly slips: string;
}

export type QuestionName = keyof Questions;

/** What is told bit by bit before the question is answered. */
export interface Bits {
  readonly verdicts: ReportVerdict;
  readonly freedom: FreedomRowData;
  readonly changes: AlterationData;
  readonly slips: SlipRow;
}

export type BitOf<Name extends QuestionName> = Name extends keyof Bits ? Bits[Name] : never;
export type Bit = Bits[keyof Bits];

/** Counted and timed limits of one question. */
export interface Bounds {
  /** Milliseconds until the engine is told to stop and to say what it knows. */
  readonly time: number;
}

export interface Request {
  readonly id: number;
  readonly ask: QuestionName;
  readonly text: string;
  /** What besides the text the question is about: which performance, which place. Empty for most. */
  readonly about: string;
  readonly bounds: Bounds;
}

export type Reply =
  /** The question has been taken up. */
  | { readonly id: number; readonly kind: 'begun' }
  | { readonly id: number; readonly kind: 'progress'; readonly spent: number }
  | { readonly id: number; readonly kind: 'bit'; readonly bit: Bit }
  | { readonly id: number; readonly kind: 'answer'; readonly answer: Questions[QuestionName] }
  /** A fault of ours, never of the note. */
  | { readonly id: number; readonly kind: 'fault'; readonly message: string };
