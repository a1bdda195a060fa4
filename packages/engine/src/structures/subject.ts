import type { Measure } from '../claims/formula.ts';

/** In what cards are alike or not, in words. */
export interface SubjectWords {
  /** `colour`. */
  readonly noun: string;
  /** Said of all cards: `the colours`. */
  readonly plural: string;
  /** Said of cards that have the same: `are alike in colour`. */
  readonly alike: string;
  /** Said of two cards that have not: `differ in colour`; empty where there are more than two values. */
  readonly opposite: string;
  /** One each of the values: `one of each suit`. */
  readonly oneOfEach: string;
}

/**
 * What is followed: a class with two or more values, a number (for sums, or for steps counted round), how many cards are such, what a
 * total comes to, two cards and where they lie, or ends with one card taken out. `measures` are 0 or 1 for classes, one measure where
 * there are two values, else one for each value; two for two cards.
 */
export interface Subject {
  readonly id: string;
  readonly is: 'class' | 'number' | 'steps' | 'count' | 'total' | 'two cards' | 'one off';
  readonly words: SubjectWords;
  readonly measures: readonly Measure[];
  /** The field: 2 for classes. */
  readonly p: number;
  /** True for facing joined to a class: two cards agree when they face alike exactly where their classes are alike. */
  readonly joinsFacing: boolean;
  /** Least and greatest number, where it is one: sums are then known in a small field too. */
  readonly bounds?: readonly [number, number];
  /** True where there is only one such card: then odd and even tell how many there are. */
  readonly single?: boolean;
  /** Cards of a class with two values on which its measure is 1: `red cards`. */
  readonly ones?: string;
}

/** Words for a class that is called by one noun. */
export function nounWords(noun: string, plural = `${noun}s`): SubjectWords {
  return {
    noun,
    plural: `the ${plural}`,
    alike: `are alike in ${noun}`,
    opposite: `differ in ${noun}`,
    oneOfEach: `one of each ${noun}`,
  };
}

/** Words for facing joined to a class. */
export function joinedWords(noun: string): SubjectWords {
  return {
    noun: `facing with ${noun}`,
    plural: `facings and ${noun}s together`,
    alike: `face the same way exactly where they are alike in ${noun}`,
    opposite: `face the same way exactly where they differ in ${noun}`,
    oneOfEach: `two cards that face the same way exactly where they differ in ${noun}`,
  };
}

export const FACING_WORDS: SubjectWords = {
  noun: 'facing',
  plural: 'the facings',
  alike: 'face the same way',
  opposite: 'face opposite ways',
  oneOfEach: 'one card face up and one face down',
};

export const ENDS_WORDS: SubjectWords = {
  noun: 'end',
  plural: 'the ends',
  alike: 'point the same way',
  opposite: 'point opposite ways',
  oneOfEach: 'one card pointing each way',
};
