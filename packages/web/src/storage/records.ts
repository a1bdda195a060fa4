/** The ends a check of a note can come to, in the engine's words. */
export const VERDICT_WORDS = ['proved', 'refuted', 'undecided', 'empty', 'not understood'] as const;
export type VerdictWord = (typeof VERDICT_WORDS)[number];

/** What the shelf shows and finds a note by; made by the engine from one revision of the text. */
export interface NoteSummary {
  readonly revision: number;
  /** Of the engine that made it; another engine's answer is asked for again. */
  readonly engine: string;
  readonly verdict: VerdictWord;
  readonly cards: number | null;
  readonly minutes: number | null;
  readonly moves: readonly string[];
  readonly structures: readonly string[];
}

export interface NoteRecord {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  /** Counts up by one with every change of the text; a save has to name the one it started from. */
  readonly revision: number;
  /** Milliseconds since 1970. */
  readonly created: number;
  readonly changed: number;
  /** When it was thrown away; 0 while it stands on the shelf. */
  readonly trashed: number;
  readonly summary: NoteSummary | null;
}

/** Why an earlier text is kept. Only automatic ones are thinned out with age. */
export const VERSION_KINDS = ['automatic', 'named', 'conflict', 'recovered', 'folder'] as const;
export type VersionKind = (typeof VERSION_KINDS)[number];

export interface VersionRecord {
  readonly key: number;
  readonly note: string;
  /** When the text was as it is here, in milliseconds since 1970. */
  readonly made: number;
  readonly kind: VersionKind;
  /** Given by a person; empty otherwise. */
  readonly name: string;
  readonly text: string;
}

export interface SettingRecord {
  readonly name: string;
  readonly value: unknown;
}

/** Ties a note to a file of the linked folder, with the text both had when they were last alike. */
export interface LinkRecord {
  readonly path: string;
  readonly note: string;
  readonly seen: string;
}
