import type { Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import type { Card } from '../cards/card.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Args, NumberRef, PileRef } from '../phrases/values.ts';
import { firstSlot, sizeOf, type Layout } from '../pictures/layout.ts';
import type { Formula } from './formula.ts';

/** What is known where a sentence of the ending is judged: sizes, numbers and which cards there are; never where they lie. */
export interface Exit {
  readonly layout: Layout;
  readonly numbers: Readonly<Record<string, number>>;
  /** Every card; one whose attributes the set-up leaves open is here once for each way it may be, always with the same id. */
  readonly cards: readonly Card[];
  /** Order of the cards at the start, for "back in the order we began": pile to card ids, top first; only piles in a known order. */
  readonly start: Readonly<Record<string, readonly number[]>>;
}

/** A table before the sentence and whether it holds. */
export interface ClaimExample {
  /** Piles as in the examples of moves, with card names or `r`/`b` for a red or black card: `r b^ r^ b`. */
  readonly table: string;
  readonly sentence: string;
  readonly holds: boolean;
}

/** A form of ending, one file each, of one shape. */
export interface Claim<A extends Args = Args> {
  readonly id: string;
  /** Headings of the trade catalogue it covers: `C4`. */
  readonly endings: readonly string[];
  readonly title: string;
  /** The first is how `format` prints it. */
  readonly phrases: readonly Phrase[];
  readonly defaults: Partial<A>;
  readonly help: string;
  readonly caution: string;
  readonly synonyms: readonly string[];
  /** Attributes the sentence speaks of; a card that lacks one is a trouble, so `meaning` may rely on them. */
  readonly attributes?: (args: A) => readonly string[];
  /** Troubles visible from the sentence and the cards alone. */
  readonly check?: (args: A, cards: readonly Card[]) => readonly Trouble[];
  /**
   * What the sentence says at this exit, in slots. Speaking of cards or places that are not there makes it false
   * (`known` false), or a trouble where the note itself is at fault. `vacuous` marks a sentence about no card at all.
   */
  readonly meaning: (args: A, exit: Exit) => Result<Meaning, Trouble>;
  /** The args that say the same up to a cut of the claim's pile, where this claim can say so by itself and cheaper. */
  readonly upToCut?: (args: A) => A;
  readonly examples: readonly ClaimExample[];
}

export interface Meaning {
  readonly formula: Formula;
  /** True when there is nothing the sentence speaks of ("every joker ..." without jokers). */
  readonly vacuous?: boolean;
  /** Customs that settled what the sentence leaves open here, such as cards left over after the last complete block. */
  readonly asides?: readonly Trouble[];
}

/** A claim whose `check` and `meaning` begin with what every claim must see to: that cards have what is said of them. */
export function defineClaim<A extends Args>(claim: Claim<A>): Claim {
  const check = (args: A, cards: readonly Card[]): readonly Trouble[] => [
    ...lacking(claim.attributes?.(args) ?? [], cards),
    ...(claim.check?.(args, cards) ?? []),
  ];
  const meaning = (args: A, exit: Exit): Result<Meaning, Trouble> => {
    const [first] = check(args, exit.cards);
    return first === undefined ? claim.meaning(args, exit) : bad(first);
  };
  // Erased for the list; a claim only ever receives args its own phrases produced and defaults filled.
  return { ...claim, check, meaning } as unknown as Claim;
}

/** For each attribute that is spoken of, the first card that lacks it. */
function lacking(attributes: readonly string[], cards: readonly Card[]): Trouble[] {
  return [...new Set(attributes)].flatMap((attribute) => {
    const card = cards.find((c) => c.attributes[attribute] === undefined);
    return card === undefined ? [] : [{ code: 'unknown-attribute', facts: { attribute, card: card.name } }];
  });
}

export function means(formula: Formula, vacuous = false): Result<Meaning, Trouble> {
  return good({ formula, vacuous });
}

export function senseless(code: string, facts: Trouble['facts'] = {}): Result<Meaning, Trouble> {
  return bad({ code, facts });
}

export function numberAt(ref: NumberRef, exit: Pick<Exit, 'numbers'>): number {
  if (typeof ref === 'number') return ref;
  const value = exit.numbers[ref.var];
  // The note reader refuses a number that is not named by then.
  if (value === undefined) throw new Error(`number ${ref.var} has no value at the ending`);
  return value;
}

export function pileAt(ref: PileRef, exit: Pick<Exit, 'numbers'>): string {
  return typeof ref === 'string' ? ref : `${ref.stem} ${numberAt(ref.n, exit)}`;
}

/** Slots of one pile, top first. */
export function slotsOf(pile: string, exit: Exit): number[] {
  const first = firstSlot(exit.layout, pile);
  return Array.from({ length: sizeOf(exit.layout, pile) }, (_, k) => first + k);
}

/** Slots of all piles, in slot order. */
export function allSlots(exit: Exit): number[] {
  return exit.layout.names.flatMap((pile) => slotsOf(pile, exit));
}
