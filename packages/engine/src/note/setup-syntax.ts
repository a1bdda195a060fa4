import type { Range } from '../base/diagnostic.ts';
import type { AttributeValue } from '../cards/card.ts';
import type { Colour, PipCard, Rank, Suit } from '../cards/names.ts';
import type { NamedOrder } from '../cards/stacks.ts';

/** One card that a set-up names: of the pack, printed by oneself, or a joker. */
export type CardRef =
  | { readonly is: 'pip'; readonly card: PipCard }
  | { readonly is: 'own'; readonly name: string }
  | { readonly is: 'joker'; readonly colour: Colour | null };

/** The card has this value; `red` is `{ attribute: 'colour', value: 'red' }`. */
export interface Test {
  readonly attribute: string;
  readonly value: AttributeValue;
}

/** A card in a list, with the marks `^` and `'` of a written table. */
export interface Listed {
  readonly ref: CardRef;
  readonly up: boolean;
  readonly end: boolean;
  readonly range: Range;
}

/** One member of a pattern: a kind, a card, or only how a card lies. */
export interface Element {
  readonly tests: readonly Test[];
  readonly ref: CardRef | null;
  readonly facing: 'up' | 'down' | null;
}

/** `torn`: no mates but the second halves of the cards themselves, stacked beneath the first in the same order. */
export type MatesOrder = 'mirror' | 'same' | 'beside' | 'torn';

/** What lies in one run of a pile, from the top. */
export type What =
  /** `2S 9H^ "lamp"` */
  | { readonly is: 'cards'; readonly cards: readonly Listed[] }
  /** `A-K of spades`, either way */
  | { readonly is: 'ranks'; readonly suit: Suit; readonly from: Rank; readonly to: Rank }
  /** `8 red cards`, `16 cards`: nothing else is known of them */
  | { readonly is: 'count'; readonly n: number; readonly any: boolean; readonly tests: readonly Test[] }
  /** `4 "lamp"`, `2 jokers` */
  | { readonly is: 'copies'; readonly n: number; readonly ref: CardRef }
  /** `8 cards, each red or black` */
  | {
      readonly is: 'each';
      readonly n: number;
      readonly any: boolean;
      readonly tests: readonly Test[];
      readonly attribute: string;
      readonly values: readonly AttributeValue[];
    }
  /** `10 cards alternately red and black`, `clubs hearts repeated, 52 cards`, `red black black` */
  | {
      readonly is: 'pattern';
      readonly style: 'alternately' | 'repeated' | 'once';
      readonly n: number;
      readonly tests: readonly Test[];
      readonly elements: readonly Element[];
    }
  /** `full pack`, `all spades`: which cards is said, their order is not */
  | { readonly is: 'set'; readonly tests: readonly Test[] }
  /** `rest of the pack`, `rest of the spades`: what no other line names */
  | { readonly is: 'rest'; readonly tests: readonly Test[] }
  /** `full pack in Si Stebbins order from 4H` */
  | {
      readonly is: 'order';
      readonly order: NamedOrder['id'];
      readonly n: number;
      readonly start: PipCard | null;
    }
  /** `8 cards and their mates in mirror order`, `A-4 of hearts torn in half and stacked` */
  | { readonly is: 'mates'; readonly base: Mateable; readonly order: MatesOrder };

export type Mateable = Extract<What, { readonly is: 'cards' | 'ranks' | 'count' }>;

/** A run as it was read; `facing` and `mixed` were said in front of it. */
export interface RunReading {
  readonly what: What;
  readonly facing: 'up' | 'down' | null;
  readonly mixed: boolean;
}

export interface Run {
  readonly what: What;
  readonly range: Range;
}

/** `up and down`: the first card face up, the second face down, and so on. */
export type Facing = 'up' | 'down' | 'free' | 'up and down' | 'down and up';

export type Setting =
  | { readonly sets: 'facing'; readonly facing: Facing }
  | { readonly sets: 'ends' }
  | { readonly sets: 'order' };

/** A setting and the runs it speaks of, both ends included. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly setting: Setting;
  readonly range: Range;
}

/** `packet: 4 red cards face up, then 4 black cards, all in any order`. */
export interface PileLine {
  readonly is: 'pile';
  readonly pile: string;
  readonly runs: readonly Run[];
  /** Indices of the runs that come after a `then`. */
  readonly starts: readonly number[];
  readonly spans: readonly Span[];
  /** Settings of the whole line, for runs without one of their own. */
  readonly all: readonly Setting[];
  /** How many packs the cards may come from. */
  readonly packs: number;
  readonly range: Range;
}

/** Which cards an attribute of one's own is about. */
export type Target =
  | { readonly is: 'card'; readonly ref: CardRef }
  | { readonly is: 'ranks'; readonly suit: Suit; readonly from: Rank; readonly to: Rank }
  | { readonly is: 'kind'; readonly tests: readonly Test[] };

/** `warm: hearts, diamonds, "lamp"` gives yes or no; `values: "lamp" 3, courts 10` gives numbers or words. */
export interface AttributeLine {
  readonly is: 'attribute';
  readonly attribute: string;
  readonly entries: readonly {
    readonly target: Target;
    readonly value: AttributeValue;
    readonly range: Range;
  }[];
  readonly yesNo: boolean;
  readonly range: Range;
}

/** A line that was not understood; it keeps its text. */
export interface UnreadLine {
  readonly is: 'unread';
  readonly text: string;
  readonly range: Range;
}

export type SetUpLine = PileLine | AttributeLine | UnreadLine;

/** How a card reference is told from others, whatever its capitals. */
export function refKey(ref: CardRef): string {
  switch (ref.is) {
    case 'pip':
      return `${ref.card.rank} ${ref.card.suit}`;
    case 'own':
      return `"${ref.name.toLowerCase()}"`;
    case 'joker':
      return ref.colour === null ? 'joker' : `${ref.colour} joker`;
  }
}
