import type { Subject } from './subject.ts';

/** Two cards by their places from the top, 0 first. */
export type Pair = readonly [number, number];

/** What a form says of a pile: pairs that are alike or opposite, or groups that show something together. */
export type Pattern =
  | { readonly of: 'pairs'; readonly pairs: readonly Pair[]; readonly relation: 'alike' | 'opposite' }
  /** Each group shows every value of the class once. */
  | { readonly of: 'one of each'; readonly groups: readonly (readonly number[])[] }
  /** The numbers of each group add up to the same, whatever that is. */
  | { readonly of: 'same sum'; readonly groups: readonly (readonly number[])[] }
  /** Each second number is so much more than its first, counted round modulo the field; any step. */
  | { readonly of: 'same step'; readonly pairs: readonly Pair[] }
  /** The numbers of some cards add up to as much as those of others, group by group. */
  | {
      readonly of: 'balanced';
      readonly groups: readonly { readonly plus: readonly number[]; readonly minus: readonly number[] }[];
    }
  /** Of each group of cards so many are such, odd or even. */
  | { readonly of: 'parity'; readonly groups: readonly (readonly number[])[]; readonly odd: 0 | 1 }
  /** The numbers of all these cards come to something, whatever it is. */
  | { readonly of: 'total'; readonly places: readonly number[] }
  /** So many of the cards at these places are such, less those at the others; whatever number that is. */
  | { readonly of: 'count'; readonly plus: readonly number[]; readonly minus: readonly number[] };

/** One way in which a form may be there: `mirrored`, with a certain sum of places, every so many places. */
export interface Variant {
  /** Tells it from the other variants of its form: `4` for every four. */
  readonly key: string;
  readonly pattern: Pattern;
  /** What is true of the pile or piles. `value` is the sum, step or count that was found. */
  readonly say: (subject: Subject, value: number, piles: readonly string[]) => string;
  /** How it is drawn: arcs between related places, blocks, and whether the packet is a ring. */
  readonly ring: boolean;
}

/** A structure the trade has a name for, one file each. */
export interface Form {
  readonly id: string;
  /** The heading of the trade's list it belongs to; empty where it has none. */
  readonly trade: string;
  /** Two or three words for margins: `alternating`. */
  readonly name: (subject: Subject) => string;
  /** How many piles it is about. */
  readonly piles: 1 | 2;
  /** Only said where the pile is all there is on the table. */
  readonly whole?: boolean;
  /** Which subjects it can be said of. */
  readonly fits: (subject: Subject) => boolean;
  /**
   * All it can be on a pile of n cards, the plainest first; of two piles, m is the size of the second, whose places go on from n.
   */
  readonly variants: (n: number, subject: Subject, m: number) => readonly Variant[];
}

/** Two-valued classes: there "opposite" has a meaning. */
export function isTwoValued(subject: Subject): boolean {
  return subject.is === 'class' && subject.measures.length === 1;
}

export function isClass(subject: Subject): boolean {
  return subject.is === 'class';
}

export function range(n: number): number[] {
  return Array.from({ length: n }, (_, i) => i);
}

/** Both relations of some pairs, as far as they make sense for the subject. */
export function bothRelations(
  pairs: readonly Pair[],
  subject: Subject,
  where: string,
  ring = false,
  key = '',
): Variant[] {
  if (pairs.length === 0) return [];
  const alike: Variant = {
    key: `${key}alike`,
    pattern: { of: 'pairs', pairs, relation: 'alike' },
    say: ({ words }) => `${where} ${words.alike}`,
    ring,
  };
  if (!isTwoValued(subject)) return [alike];
  const opposite: Variant = {
    key: `${key}opposite`,
    pattern: { of: 'pairs', pairs, relation: 'opposite' },
    say: ({ words }) => `${where} ${words.opposite}`,
    ring,
  };
  return [opposite, alike];
}
