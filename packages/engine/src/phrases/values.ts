/**
 * The typed blanks of sentences. Every value is plain JSON, so a compiled routine can be stored, compared and printed back.
 */

/** A literal number or one that a spectator named earlier. */
export type NumberRef = number | { readonly var: string };

/**
 * How much freedom a sentence leaves for a number. The bounds that the cards set (not more than there are) are added by the
 * move; bounds written in the sentence are never widened.
 */
export type Amount =
  | { readonly of: 'any' }
  | { readonly of: 'exactly'; readonly n: NumberRef }
  | { readonly of: 'range'; readonly from: NumberRef; readonly to: NumberRef; readonly about?: string }
  | { readonly of: 'at least'; readonly n: NumberRef }
  | { readonly of: 'at most'; readonly n: NumberRef }
  | { readonly of: 'multiple'; readonly k: number; readonly plus: number }
  /** Exactly half of the pile in question, which must then be even. */
  | { readonly of: 'half' };

/** A block of cards at one end of a pile. */
export interface Block {
  readonly end: 'top' | 'bottom';
  readonly cards: Amount;
}

/** `packet`, `pile 3`, or a numbered pile whose number was named: `{ stem: 'pile', n: { var: 'N' } }`. */
export type PileRef = string | { readonly stem: string; readonly n: NumberRef };

/** A place of a pile counted from one end, the outermost card being 1. */
export interface PlaceRef {
  readonly end: 'top' | 'bottom';
  readonly n: NumberRef;
}

/** Which cards are meant: a conjunction of tests, each possibly denied. An empty list means every card. */
export interface Kind {
  readonly tests: readonly KindTest[];
}

export type KindTest =
  /** `attribute` has one of `values`. */
  | {
      readonly test: 'attribute';
      readonly attribute: string;
      readonly values: readonly (string | number)[];
      readonly not?: boolean;
    }
  /** `up`, `end` or a mark is set. */
  | { readonly test: 'bit'; readonly bit: string; readonly not?: boolean }
  /** One named card, by its name as the set-up writes it. */
  | { readonly test: 'card'; readonly name: string; readonly not?: boolean };

/** Cards to be counted: those of a kind, in one pile or on the whole table. */
export interface Tally {
  readonly kind: Kind;
  readonly pile?: PileRef;
}

/** One place of one pile. */
export interface Spot {
  readonly place: PlaceRef;
  readonly pile: PileRef;
}

/**
 * A way of taking cards together, each group to be judged by itself. `blocks` of a size are counted from one end; `parts` are
 * halves, thirds, quarters; `mirror` pairs are equally far from the two ends; `halfway` pairs lie half the pile apart;
 * `across` pairs take two piles card by card; `piles` are all numbered piles of a stem, whole; `ends` is one group of the
 * outermost cards of these piles, `end` one group of the first cards from one end, `spots` one group of the places named.
 */
export type Groups =
  | {
      readonly groups: 'blocks';
      readonly size: NumberRef;
      readonly from: 'top' | 'bottom';
      readonly pile: PileRef;
    }
  | { readonly groups: 'parts'; readonly parts: number; readonly pile: PileRef }
  | { readonly groups: 'mirror'; readonly pile: PileRef }
  | { readonly groups: 'halfway'; readonly pile: PileRef }
  | { readonly groups: 'neighbours'; readonly round: boolean; readonly pile: PileRef }
  | { readonly groups: 'across'; readonly pile: PileRef; readonly other: PileRef; readonly opposite: boolean }
  | { readonly groups: 'piles'; readonly stem: string }
  | { readonly groups: 'ends'; readonly end: 'top' | 'bottom'; readonly stem: string }
  | {
      readonly groups: 'end';
      readonly end: 'top' | 'bottom';
      readonly size: NumberRef;
      readonly pile: PileRef;
    }
  | { readonly groups: 'spots'; readonly spots: readonly Spot[] };

export type ArgValue =
  | string
  | number
  | boolean
  | NumberRef
  | Amount
  | PileRef
  | PlaceRef
  | Block
  | Kind
  | Tally
  | Groups
  | readonly ArgValue[]
  | undefined;

export type Args = Readonly<Record<string, ArgValue>>;

/** What a sentence may refer to by name at its place in the note. */
export interface Names {
  /** Piles that exist by then or may. */
  readonly piles: readonly string[];
  /** Numbers that were named. */
  readonly numbers: readonly string[];
  /** Marks that were put on cards, such as `chosen`. */
  readonly marks: readonly string[];
  /** Attributes of one's own: name to its values; a yes/no attribute has the values `yes` and `no`. */
  readonly attributes: Readonly<Record<string, readonly (string | number)[]>>;
  /** Names of all cards in the set-up. */
  readonly cards: readonly string[];
}
