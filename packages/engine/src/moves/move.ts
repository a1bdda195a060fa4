import type { Facts, Trouble } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Amount, Args, Names, NumberRef, PileRef, PlaceRef } from '../phrases/values.ts';
import type { Action } from '../pictures/actions.ts';
import { sizeOf, type Layout } from '../pictures/layout.ts';

/** Where a move stands between two of its small decisions; `START` when it begins. */
export type Phase = string | number;
export const START: Phase = 0;

/** Names one option among those of one moment; stable, so a performance can be written down and replayed. */
export type Key = string | number;

/** All that a move may know: sizes and named numbers, and what it declared to look at; never other cards. */
export interface View {
  readonly layout: Layout;
  readonly phase: Phase;
  readonly numbers: Readonly<Record<string, number>>;
  /** What `observe` returned for this table; undefined for a move that does not look. */
  readonly seen: Key | undefined;
}

/** One way on. `off` is 1 when it counts as a decision away from the plain path; the inner steps of one mix count 0. */
export interface Option {
  readonly key: Key;
  readonly actions: readonly Action[];
  /** The next phase, or null when the move is over. */
  readonly next: Phase | null;
  readonly off: 0 | 1;
  /** Numbers this option fixes for later steps. */
  readonly set?: Readonly<Record<string, number>>;
  /** Relative chance among the options of this moment when people choose at random; 1 if absent. */
  readonly weight?: number;
}

/** No way on: the performance is stuck, for this reason. */
export interface Stuck {
  readonly stuck: Trouble;
}

/** A table as a move that looks sees it. Places count from the top, 0 first. */
export interface TableView {
  readonly layout: Layout;
  cardAt(pile: string, place: number): Card;
  bitAt(pile: string, place: number, bit: string): number;
}

/** Cards whose order, and faces or ends where said, are left to chance; `unit` cards at a time where blocks stay together. */
export interface Scattered {
  readonly pile: string;
  readonly at: number;
  readonly count: number;
  readonly unit?: number;
  readonly faces?: boolean;
  readonly ends?: boolean;
}

/** A move that looks at cards says at what, so that cards alike in all of it can be taken as one. */
export interface Looking<A> {
  readonly attributes: (args: A) => readonly string[];
  readonly bits: (args: A) => readonly string[];
  /** A small summary of what is seen; options may depend on nothing else of the cards. */
  readonly observe: (args: A, table: TableView, view: View) => Key;
}

/** A small packet before, a sentence, and the packet after for the choices given: help, page and test at once. */
export interface MoveExample {
  /** `1 2 3 4`, `1 2^ 3'`: names from the top, ^ face up, ' ends exchanged; other piles as `pile 1: 3 4`. */
  readonly before: string;
  readonly sentence: string;
  /** Keys of the options taken where there was more than one; forced ones are left out. */
  readonly choices: readonly Key[];
  readonly after: string;
  /** Where the example comes from, when it is not ours. */
  readonly source?: string;
}

export type Hands = 'cut' | 'turn' | 'deal' | 'gather' | 'mix' | 'choose' | 'hand over' | 'order';

/**
 * A move, one file each, teaching itself from top to bottom. `A` is the shape of its blanks after defaults.
 */
export interface Move<A extends Args = Args> {
  readonly id: string;
  /** Headings of the trade catalogue it covers, for the coverage page: `P1`. */
  readonly procedures: readonly string[];
  readonly hands: Hands;
  /** Two or three words for lists: `complete cut`. */
  readonly title: string;
  /** The first is how `format` prints it. */
  readonly phrases: readonly Phrase[];
  readonly defaults: Partial<A>;
  readonly help: string;
  readonly caution: string;
  /** Other words of the trade for the same thing that the phrases accept. */
  readonly synonyms: readonly string[];
  /** Names this sentence brings into being: piles it may make, numbers, marks. */
  readonly brings?: (args: A) => Partial<Pick<Names, 'piles' | 'numbers' | 'marks'>>;
  /** Troubles visible from the sentence alone: zero piles, a range upside down. */
  readonly check?: (args: A) => readonly Trouble[];
  /** Words in this sentence that the trade uses in two ways, and how they were taken. */
  readonly readings?: (args: A) => readonly Reading[];
  readonly looks?: Looking<A>;
  /**
   * True when the choice is made known by its nature: named, pointed to, said, or plain to see on the table. The performer may then
   * build on it, unless the sentence says it is secret. A function where that depends on the wording.
   */
  readonly open?: boolean | ((args: A) => boolean);
  /** Numbers and marks that everybody knows after this, though they were settled unseen before. */
  readonly tells?: (args: A) => readonly string[];
  /** Every way on at this moment, plainest first. Pure: the same view gives the same options. */
  readonly options: (args: A, view: View) => readonly Option[] | Stuck;
  /**
   * The stretches of cards that this mix leaves in an order as good as random when people do it blindly: then every order is
   * taken as equally likely where a chance is asked for, instead of the options' weights.
   */
  readonly scatters?: (args: A, view: View) => readonly Scattered[];
  /** How many options there are, counted without listing, at START with these sizes; checked against the list. */
  readonly count?: (args: A, view: View) => number;
  /** Where the cards go with the first and the last of the numbers that can be chosen: `back on top`, `right to the bottom`. */
  readonly outermost?: { readonly least: string; readonly most: string };
  /** The choices made during one run of the move, in the trade's words: `cut 5 cards`; empty when nothing was chosen. */
  readonly say: (args: A, keys: readonly Key[], view: View) => string;
  readonly examples: readonly MoveExample[];
}

/** An ambiguous word, the reading taken, and how a note would ask for the other. */
export interface Reading {
  readonly word: string;
  readonly taken: string;
  readonly other: string;
}

/** Gives a module its precise blanks while the list holds all moves alike. */
export function defineMove<A extends Args>(move: Move<A>): Move {
  // The list erases A; each move only ever receives args its own phrases produced and defaults filled.
  return move as unknown as Move;
}

export function stuck(code: string, facts: Facts = {}): Stuck {
  return { stuck: { code, facts } };
}

export function isStuck(options: readonly Option[] | Stuck): options is Stuck {
  return 'stuck' in options;
}

/** Whether a choice at this move is known to everybody where the sentence does not say. */
export function isOpenByNature({ open = false }: Move, args: Args): boolean {
  return typeof open === 'boolean' ? open : open(args);
}

export function numberOf(ref: NumberRef, view: Pick<View, 'numbers'>): number {
  if (typeof ref === 'number') return ref;
  const value = view.numbers[ref.var];
  // The note reader refuses a number used before it is named.
  if (value === undefined) throw new Error(`number ${ref.var} has no value here`);
  return value;
}

export function pileName(ref: PileRef, view: Pick<View, 'numbers'>): string {
  return typeof ref === 'string' ? ref : `${ref.stem} ${numberOf(ref.n, view)}`;
}

export function pileSize(ref: PileRef, view: View): number {
  return sizeOf(view.layout, pileName(ref, view));
}

/** 0-based place from the top; may lie outside the pile, which the caller checks. */
export function placeIndex(place: PlaceRef, size: number, view: Pick<View, 'numbers'>): number {
  const n = numberOf(place.n, view);
  return place.end === 'top' ? n - 1 : size - n;
}

/** The numbers from `least` to `most` that an amount allows, ascending; `most` is the size of the pile where half counts. */
export function allowed(amount: Amount, least: number, most: number, view: Pick<View, 'numbers'>): number[] {
  let from = least;
  let to = most;
  let step = 1;
  switch (amount.of) {
    case 'any':
      break;
    case 'exactly':
      from = to = numberOf(amount.n, view);
      break;
    case 'range':
      from = Math.max(least, numberOf(amount.from, view));
      to = numberOf(amount.to, view);
      break;
    case 'at least':
      from = Math.max(least, numberOf(amount.n, view));
      break;
    case 'at most':
      to = numberOf(amount.n, view);
      break;
    case 'multiple':
      step = amount.k;
      from = least + ((((amount.plus - least) % step) + step) % step);
      break;
    case 'half':
      if (most % 2 === 1) return [];
      from = to = most / 2;
      break;
  }
  const list: number[] = [];
  const last = Math.min(to, most);
  for (let n = from; n <= last; n += step) if (n >= least) list.push(n);
  return list;
}
