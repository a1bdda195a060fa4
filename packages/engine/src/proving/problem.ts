import { inverse, isPrime, MOST_PRIME, primeAbove } from '../base/echelon.ts';
import type { Card } from '../cards/card.ts';
import type { Formula, Measure, Term } from '../claims/formula.ts';
import type { Graph } from '../routine/graph.ts';
import { spaceOf, type Space } from './space.ts';

/**
 * A question for linear algebra: a family of equations that handling treats alike. A row is an equation at an exit, `weights`
 * over (slot, column) and `constants` over the basis of constants. Each member reads the rows with its own columns (one kind of
 * card, say) and its own constants, so that a claim about thirteen kinds costs as much as one about a single kind.
 */
export interface Problem {
  readonly p: number;
  readonly d: number;
  /** Number of basis constants; the first is 1 for every member. */
  readonly m: number;
  /** Entries of a vector: slots times d, then m. */
  readonly width: number;
  readonly rows: readonly Row[];
  readonly members: readonly Member[];
  readonly space: Space;
}

export interface Row {
  readonly exit: number;
  /** Sparse: index slot * d + column, value in the field. */
  readonly weights: readonly (readonly [number, number])[];
  readonly constants: readonly number[];
}

export interface Member {
  readonly space: Space;
  /** Values of the m basis constants for this member; the first is 1. */
  readonly constants: readonly number[];
}

interface Equation {
  readonly terms: readonly Term[];
  readonly total: number;
  readonly p: number;
}

/** The equations whose conjunction the formula is, or null when it is none. */
export function equationsOf(formula: Formula, cards: readonly Card[]): Equation[] | null {
  switch (formula.is) {
    case 'known':
      return formula.holds ? [] : [{ terms: [], total: 1, p: 2 }];
    case 'and': {
      const all: Equation[] = [];
      for (const part of formula.parts) {
        const some = equationsOf(part, cards);
        if (some === null) return null;
        for (const equation of some) all.push(equation);
      }
      return all;
    }
    case 'equal': {
      if (formula.mod !== undefined) {
        if (!isPrime(formula.mod) || formula.mod > MOST_PRIME) return null;
        return [{ terms: formula.terms, total: formula.total, p: formula.mod }];
      }
      const p = fieldFor(formula.terms, formula.total, cards);
      return p === null ? null : [{ terms: formula.terms, total: formula.total, p }];
    }
    default:
      return null;
  }
}

const boundsKnown = new WeakMap<readonly Card[], Map<string, readonly [number, number]>>();

/** Least and greatest value of a measure over all cards and all settings of its bits. */
function boundsOf(measure: Measure, cards: readonly Card[]): readonly [number, number] {
  let byId = boundsKnown.get(cards);
  if (byId === undefined) boundsKnown.set(cards, (byId = new Map<string, readonly [number, number]>()));
  const known = byId.get(measure.id);
  if (known !== undefined) return known;
  let [low, high] = [Infinity, -Infinity];
  for (const card of cards)
    for (let s = 0; s < 1 << measure.bits.length; s++) {
      const value = measure.of(card, (bit) => (s >> measure.bits.indexOf(bit)) & 1);
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  const bounds = [low, high] as const;
  byId.set(measure.id, bounds);
  return bounds;
}

/**
 * The smallest field in which the equation says the same as in whole numbers: its prime exceeds every value that the difference
 * of the two sides can take; 2 does when that difference is never beyond -1, 0, 1.
 */
function fieldFor(terms: readonly Term[], total: number, cards: readonly Card[]): number | null {
  let [low, high] = [-total, -total];
  for (const { coef, measure } of terms) {
    const [least, most] = boundsOf(measure, cards);
    low += coef > 0 ? coef * least : coef * most;
    high += coef > 0 ? coef * most : coef * least;
  }
  if (!Number.isInteger(low) || !Number.isInteger(high)) return null;
  if (low >= -1 && high <= 1) return 2;
  const p = primeAbove(Math.max(Math.abs(low), Math.abs(high)));
  return p > MOST_PRIME ? null : p;
}

interface Draft {
  readonly space: Space;
  readonly rows: Map<string, { exit: number; weights: (readonly [number, number])[]; total: number }>;
}

/**
 * Sorts equations at exits into problems. `ops` are the operations on bits in the graph.
 */
export function problemsOf(
  graph: Graph,
  cards: readonly Card[],
  ops: readonly number[],
  exits: readonly { readonly exit: number; readonly equations: readonly Equation[] }[],
): Problem[] {
  const spaces = new Map<string, Space>();
  const drafts = new Map<string, Draft>();
  for (const { exit, equations } of exits)
    for (const equation of equations) {
      const measures = [...new Map(equation.terms.map((t) => [t.measure.id, t.measure])).values()];
      const key = `${equation.p}|${measures.map((m) => m.id).join('|')}`;
      let space = spaces.get(key);
      if (space === undefined)
        spaces.set(
          key,
          (space = spaceOf(measures, equation.p, cards, ops, (bit) => graph.bits.indexOf(bit))),
        );
      let draft = drafts.get(key);
      if (draft === undefined) drafts.set(key, (draft = { space, rows: new Map() }));
      const { weights, total } = rowOf(equation, measures, space);
      let name = `${exit}:${weights.map(([i, w]) => `${i}*${w}`).join()}`;
      while (draft.rows.has(name) && draft.rows.get(name)?.total !== total) name += '#';
      draft.rows.set(name, { exit, weights, total });
    }
  // Members of one family: handling acts alike and their rows differ in constants only.
  const families = new Map<string, Draft[]>();
  for (const draft of drafts.values()) {
    const key = `${draft.space.signature}|${[...draft.rows.keys()].sort().join('|')}`;
    const family = families.get(key);
    if (family === undefined) families.set(key, [draft]);
    else family.push(draft);
  }
  return [...families.values()].map((family) => familyProblem(family, graph.cards));
}

function rowOf(
  equation: Equation,
  measures: readonly Measure[],
  space: Space,
): { weights: (readonly [number, number])[]; total: number } {
  const { p, d } = space;
  const index = new Map(measures.map((measure, i) => [measure.id, i]));
  const weights = new Map<number, number>();
  let total = equation.total;
  for (const { slot, coef, measure } of equation.terms) {
    const { columns, constant } = space.measures[index.get(measure.id) as number];
    total -= coef * constant;
    columns.forEach((c, k) => {
      if (c !== 0) weights.set(slot * d + k, ((((weights.get(slot * d + k) ?? 0) + coef * c) % p) + p) % p);
    });
  }
  const kept = [...weights].filter(([, w]) => w !== 0).sort(([a], [b]) => a - b);
  return { weights: kept, total: ((total % p) + p) % p };
}

/** Finds a basis for the constants of all rows, seen as functions of the member, and writes the rows in it. */
function familyProblem(family: readonly Draft[], slots: number): Problem {
  const space = family[0].space;
  const { p, d } = space;
  const names = [...family[0].rows.keys()];
  const basis: number[][] = [family.map(() => 1)];
  const reduced: { row: number[]; pivot: number; as: number[] }[] = [];
  const coordinates = (f: readonly number[]): number[] => {
    const rest = [...f];
    const as: number[] = [];
    for (const { row, pivot, as: made } of reduced) {
      const times = rest[pivot];
      if (times === 0) continue;
      row.forEach((value, i) => (rest[i] = (rest[i] + (p - times) * value) % p));
      made.forEach((c, i) => (as[i] = ((as[i] ?? 0) + times * c) % p));
    }
    const pivot = rest.findIndex((value) => value !== 0);
    if (pivot < 0) return as;
    if (reduced.length > 0) basis.push([...f]);
    const self = basis.length - 1;
    const scale = inverse(rest[pivot], p);
    const made = as.map((c) => ((p - (c ?? 0)) * scale) % p);
    made[self] = scale;
    reduced.push({ row: rest.map((value) => (value * scale) % p), pivot, as: made });
    const unit: number[] = [];
    unit[self] = 1;
    return unit;
  };
  coordinates(basis[0]);
  const drafts = names.map((name) => {
    const { exit, weights } = family[0].rows.get(name) as {
      exit: number;
      weights: (readonly [number, number])[];
    };
    // sum of weights - total = 0, so the constant side enters with a minus.
    const totals = family.map((draft) => (p - (draft.rows.get(name)?.total ?? 0)) % p);
    return { exit, weights, as: coordinates(totals) };
  });
  const m = basis.length;
  return {
    p,
    d,
    m,
    width: slots * d + m,
    space,
    rows: drafts.map(({ exit, weights, as }) => ({
      exit,
      weights,
      constants: Array.from({ length: m }, (_, j) => as[j] ?? 0),
    })),
    members: family.map((draft, t) => ({ space: draft.space, constants: basis.map((f) => f[t]) })),
  };
}
