import type { Card } from '../cards/card.ts';

/** The value of one bit of the card in a slot: 0 or 1. */
export type BitsOf = (bit: string) => number;

/**
 * A number read off one card and its bits. `id` says what is measured: two measures with the same id are the same function.
 * Only the attributes and bits named may be looked at; cards alike in these are alike for the measure.
 */
export interface Measure {
  readonly id: string;
  readonly attributes: readonly string[];
  readonly bits: readonly string[];
  readonly of: (card: Card, bit: BitsOf) => number;
}

/** `coef` times what `measure` reads in slot `slot`. */
export interface Term {
  readonly slot: number;
  readonly coef: number;
  readonly measure: Measure;
}

/**
 * What a sentence says of one table, in slots of that table's layout. `equal` is an equation in whole numbers, or modulo
 * `mod` where given; `order` compares; `judged` is asked of all its readings at once, where no sum tells; `known` is settled by sizes and
 * numbers alone.
 */
export type Formula =
  | {
      readonly is: 'equal';
      readonly terms: readonly Term[];
      readonly total: number;
      readonly mod?: number;
    }
  | { readonly is: 'order'; readonly terms: readonly Term[]; readonly least?: number; readonly most?: number }
  | {
      readonly is: 'judged';
      /** What is asked, so that the same question about the same cards is known again. */
      readonly id: string;
      /** Each with the coefficient 1: readings in the order in which `judge` wants them. */
      readonly terms: readonly Term[];
      readonly judge: (readings: readonly number[]) => boolean;
    }
  | { readonly is: 'and' | 'or'; readonly parts: readonly Formula[] }
  | { readonly is: 'not'; readonly part: Formula }
  | { readonly is: 'if'; readonly when: Formula; readonly then: Formula }
  | { readonly is: 'exactly when'; readonly left: Formula; readonly right: Formula }
  | { readonly is: 'known'; readonly holds: boolean };

export const TRUE: Formula = { is: 'known', holds: true };
export const FALSE: Formula = { is: 'known', holds: false };

export function equal(terms: readonly Term[], total: number, mod?: number): Formula {
  return mod === undefined ? { is: 'equal', terms, total } : { is: 'equal', terms, total, mod };
}

export function and(parts: readonly Formula[]): Formula {
  return parts.length === 1 ? parts[0] : { is: 'and', parts };
}

export function or(parts: readonly Formula[]): Formula {
  return parts.length === 1 ? parts[0] : { is: 'or', parts };
}

export function not(part: Formula): Formula {
  return { is: 'not', part };
}

/** A table as formulas see it: the card in a slot and its bits. */
export interface SlotView {
  card(slot: number): Card;
  bit(slot: number, bit: string): number;
}

function sum(terms: readonly Term[], table: SlotView): number {
  let total = 0;
  for (const { slot, coef, measure } of terms)
    total += coef * measure.of(table.card(slot), (b) => table.bit(slot, b));
  return total;
}

/** Whether a formula is true of a table: the meaning that every other treatment must agree with. */
export function holds(formula: Formula, table: SlotView): boolean {
  switch (formula.is) {
    case 'equal': {
      const off = sum(formula.terms, table) - formula.total;
      return formula.mod === undefined ? off === 0 : off % formula.mod === 0;
    }
    case 'order': {
      const total = sum(formula.terms, table);
      return total >= (formula.least ?? -Infinity) && total <= (formula.most ?? Infinity);
    }
    case 'judged':
      return formula.judge(
        formula.terms.map(({ slot, measure }) => measure.of(table.card(slot), (b) => table.bit(slot, b))),
      );
    case 'and':
      return formula.parts.every((part) => holds(part, table));
    case 'or':
      return formula.parts.some((part) => holds(part, table));
    case 'not':
      return !holds(formula.part, table);
    case 'if':
      return !holds(formula.when, table) || holds(formula.then, table);
    case 'exactly when':
      return holds(formula.left, table) === holds(formula.right, table);
    case 'known':
      return formula.holds;
  }
}

/** The same formula about rearranged slots; `flip` also reads every card as turned over. */
export function moved(
  formula: Formula,
  slotOf: (slot: number) => number,
  flip: (slot: number) => boolean,
): Formula {
  const term = (t: Term): Term => ({
    ...t,
    slot: slotOf(t.slot),
    measure: flip(t.slot) ? turnedOver(t.measure) : t.measure,
  });
  const go = (f: Formula): Formula => {
    switch (f.is) {
      case 'equal':
      case 'order':
      case 'judged':
        return { ...f, terms: f.terms.map(term) };
      case 'and':
      case 'or':
        return { ...f, parts: f.parts.map(go) };
      case 'not':
        return { ...f, part: go(f.part) };
      case 'if':
        return { ...f, when: go(f.when), then: go(f.then) };
      case 'exactly when':
        return { ...f, left: go(f.left), right: go(f.right) };
      case 'known':
        return f;
    }
  };
  return go(formula);
}

/** What the measure would read if the card lay the other way up. */
export function turnedOver(measure: Measure): Measure {
  if (!measure.bits.includes('up')) return measure;
  const id = measure.id.startsWith('turned(') ? measure.id.slice(7, -1) : `turned(${measure.id})`;
  return {
    ...measure,
    id,
    of: (card, bit) => measure.of(card, (b) => (b === 'up' ? 1 - bit('up') : bit(b))),
  };
}

/** Everything a formula looks at, so that cards alike in it can be taken as one. */
export function readsOf(formula: Formula): { attributes: Set<string>; bits: Set<string> } {
  const attributes = new Set<string>();
  const bits = new Set<string>();
  const go = (f: Formula): void => {
    switch (f.is) {
      case 'equal':
      case 'order':
      case 'judged':
        for (const { measure } of f.terms) {
          measure.attributes.forEach((a) => attributes.add(a));
          measure.bits.forEach((b) => bits.add(b));
        }
        return;
      case 'and':
      case 'or':
        return f.parts.forEach(go);
      case 'not':
        return go(f.part);
      case 'if':
        go(f.when);
        return go(f.then);
      case 'exactly when':
        go(f.left);
        return go(f.right);
      case 'known':
        return;
    }
  };
  go(formula);
  return { attributes, bits };
}
