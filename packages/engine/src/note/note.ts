import type { Diagnostic, Range } from '../base/diagnostic.ts';

/** A piece of the note with its place. `text` is what stands there, line ends and all. */
export interface Piece {
  readonly text: string;
  readonly range: Range;
}

/** Who is thanked for what. */
export interface Credit {
  readonly for: string;
  readonly source: string;
}

/** A reading of an ambiguous word that the author has confirmed: `cut: the cut is completed`. */
export interface Confirmed {
  readonly word: string;
  readonly taken: string;
}

/** What the YAML head says. Keys that are not ours are left alone. */
export interface Head {
  /** From the opening fence to the end of the closing one; null when the note has no head. */
  readonly range: Range | null;
  readonly title: string | null;
  readonly minutes: number | null;
  readonly credits: readonly Credit[];
  readonly readings: readonly Confirmed[];
  /** Where a confirmed reading would be written and what must stand around it; null where the head leaves no place. */
  readonly place: { readonly at: number; readonly before: string; readonly after: string } | null;
}

/** Blocks in the order in which they stand in a section or an item. */
export type Block =
  | { readonly is: 'steps'; readonly range: Range; readonly items: readonly Item[] }
  | { readonly is: 'bullets'; readonly range: Range; readonly items: readonly Item[] }
  /** A blockquote: what is said aloud, without its quote marks. */
  | { readonly is: 'patter'; readonly range: Range; readonly text: string }
  /** A paragraph for people, or anything else that is no list and no quote. */
  | { readonly is: 'prose'; readonly range: Range; readonly text: string };

export interface Item {
  readonly range: Range;
  /** Its first paragraph, or null where the item has none. */
  readonly sentence: Piece | null;
  /** What follows the first paragraph. */
  readonly blocks: readonly Block[];
}

export interface Section {
  /** The heading's text. */
  readonly heading: Piece;
  readonly range: Range;
  readonly blocks: readonly Block[];
}

/** A lecture note as it was read: everything in it that is meant to be understood, with its place in the text. */
export interface Note {
  readonly text: string;
  readonly head: Head;
  /** From the head, else the first heading that is no section, else empty. */
  readonly title: string;
  readonly setUp: Section | null;
  readonly working: Section | null;
  readonly ending: Section | null;
  readonly prediction: Section | null;
  /** What comes before the first section. */
  readonly opening: readonly Block[];
  /** Sections of the author's own, such as thanks or history. */
  readonly others: readonly Section[];
  /** Troubles of the layout; sentences are judged by `compile`. */
  readonly diagnostics: readonly Diagnostic[];
}

export function rangeOf(from: number, to: number): Range {
  return { from, to };
}
