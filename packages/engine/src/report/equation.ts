import { inverse } from '../base/echelon.ts';
import type { SlotView } from '../claims/formula.ts';
import type { Trait } from './traits.ts';

export interface EquationTerm {
  readonly slot: number;
  readonly coef: number;
  readonly trait: Trait;
}

/** The sum of its terms is `total`, in the field of p elements; `whole` when it says the same in whole numbers. */
export interface Equation {
  readonly p: number;
  readonly whole: boolean;
  readonly terms: readonly EquationTerm[];
  readonly total: number;
}

/** Whether an equation is true of a table. */
export function isTrueOf({ p, whole, terms, total }: Equation, table: SlotView): boolean {
  let off = -total;
  for (const { slot, coef, trait } of terms)
    off += coef * trait.of(table.card(slot), (bit) => table.bit(slot, bit));
  return whole ? off === 0 : off % p === 0;
}

/** Between -p/2 and p/2. */
function centred(value: number, p: number): number {
  const rest = ((value % p) + p) % p;
  return rest * 2 > p ? rest - p : rest;
}

/**
 * The same equation with the smallest numbers that scaling gives, and in whole numbers where the field is large enough for both to
 * say the same.
 */
export function plainest(terms: readonly EquationTerm[], total: number, p: number): Equation {
  if (p === 2) return { p, whole: false, terms, total: total & 1 };
  let best: Equation | undefined;
  let smallest = Infinity;
  for (const scale of new Set([1, ...terms.map(({ coef }) => inverse(coef, p))])) {
    const scaled = terms.map((term) => ({ ...term, coef: centred(term.coef * scale, p) }));
    const sum = scaled.reduce((all, { coef }) => all + Math.abs(coef), 0);
    if (sum >= smallest) continue;
    smallest = sum;
    best = { p, whole: false, terms: scaled, total: centred(total * scale, p) };
  }
  if (best === undefined) return { p, whole: false, terms, total: centred(total, p) };
  // The total may be any of those alike modulo p: when one only is within reach, the equation says so in whole numbers. When none
  // is, no table can meet it, which one out of reach says as well.
  const [low, high] = reachOf(best.terms);
  const least = best.total + p * Math.ceil((low - best.total) / p);
  if (least + p > high) return flipped({ ...best, whole: true, total: least });
  return flipped(best);
}

/** Least and greatest that the sum of some terms can be. */
function reachOf(terms: readonly EquationTerm[]): readonly [number, number] {
  const reach = (isLow: boolean): number =>
    terms.reduce((all, { coef, trait }) => all + coef * (coef > 0 === isLow ? trait.least : trait.most), 0);
  return [reach(true), reach(false)];
}

/** True when no table whatever meets the equation. */
export function isHopeless({ whole, terms, total }: Equation): boolean {
  const [low, high] = reachOf(terms);
  return whole && (total < low || total > high);
}

/** More is said on the left than on the right; where both say as much, the first place comes first. */
function flipped(equation: Equation): Equation {
  const sum = equation.terms.reduce((all, { coef }) => all + Math.sign(coef), 0);
  const lead = sum !== 0 ? sum : equation.total !== 0 ? equation.total : (equation.terms[0]?.coef ?? 1);
  if (lead > 0) return equation;
  return {
    ...equation,
    terms: equation.terms.map((term) => ({ ...term, coef: -term.coef })),
    // Zero has no sign.
    total: equation.total === 0 ? 0 : -equation.total,
  };
}
