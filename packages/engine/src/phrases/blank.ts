import type { Trouble } from '../base/diagnostic.ts';
import type { Token } from './tokens.ts';
import type { ArgValue, Names } from './values.ts';

/** One way of reading a blank from a token on; with `trouble` when it is understood only in form, such as an unknown pile. */
export interface BlankReading<T extends ArgValue = ArgValue> {
  readonly value: T;
  /** Index of the first token after it. */
  readonly next: number;
  readonly trouble?: Trouble;
}

/** A type of blank: how it is read, how it is printed, and what to call it in a message. */
export interface Blank<T extends ArgValue = ArgValue> {
  readonly type: string;
  /** What belongs here, for messages: `a number`. */
  readonly what: string;
  /** Longest reading first. */
  readonly read: (tokens: readonly Token[], at: number, names: Names) => readonly BlankReading<T>[];
  readonly print: (value: T) => string;
  /** Values to try laws with; every one must print and read back with `SAMPLE_NAMES`. */
  readonly samples: readonly T[];
}

export function defineBlank<T extends ArgValue>(blank: Blank<T>): Blank {
  // Erased for the registry; a blank only ever prints what it read.
  return blank as unknown as Blank;
}

/** Names that the laws of the phrases use. */
export const SAMPLE_NAMES: Names = {
  piles: ['packet', 'pile 1', 'pile 2', 'pile 3', 'table', 'left', 'right'],
  numbers: ['n', 'k'],
  marks: ['chosen'],
  attributes: { warm: ['yes', 'no'], season: ['spring', 'summer'], weight: [1, 2, 3] },
  cards: ['10C', 'lamp'],
};
