import { echelonOver, type Echelon, type Vector } from '../base/echelon.ts';
import type { Card } from '../cards/card.ts';
import type { Layout } from '../pictures/layout.ts';
import type { Problem } from '../proving/problem.ts';
import type { Graph } from '../routine/graph.ts';
import { matched } from './match.ts';
import { recognise, type Found, type SlotRow } from './recognise.ts';
import { fromNeed, type Reading } from './slot-vectors.ts';
import type { Subject } from './subject.ts';

/** What is needed at a location in the trade's words, and the needed equations that no structure says. */
export interface Needed {
  readonly found: readonly Found[];
  /** Dense rows of `problem.width`, as they were given. */
  readonly rest: readonly (readonly number[])[];
  /** True when the structures say all that is needed. */
  readonly isAll: boolean;
}

/** Structures that follow from needed equations (dense rows of `problem.width`). */
export function neededStructures(
  problem: Problem,
  rows: readonly (readonly number[])[],
  layout: Layout,
  {
    graph,
    cards,
    subjects,
  }: { readonly graph: Graph; readonly cards: readonly Card[]; readonly subjects: readonly Subject[] },
): Needed {
  if (rows.length === 0) return { found: [], rest: [], isAll: true };
  const told = echelonOver(problem.p, problem.width);
  const found: Found[] = [];
  for (const { subject, readings } of matched(problem, graph, cards, subjects))
    for (const one of recognise(fromNeed(problem, rows, readings), layout, subject)) {
      let isNew = false;
      for (const row of one.rows) if (told.insert(asProblemRow(row, problem, readings))) isNew = true;
      if (isNew) found.push(one);
    }
  const rest = rows.filter((row) => insertDense(told, row, problem.p));
  return { found, rest, isAll: rest.length === 0 };
}

/** A structure's equation in the columns of the problem. */
function asProblemRow({ weights, total }: SlotRow, problem: Problem, readings: readonly Reading[]): Vector {
  const { p, d, m, width } = problem;
  const dense = new Array<number>(width).fill(0);
  const fixed = width - m;
  const slots = fixed / d;
  let rest = -total;
  for (const [at, coef] of weights) {
    const slot = at % slots;
    const { columns, constant } = readings[Math.floor(at / slots)];
    columns.forEach((c, k) => (dense[slot * d + k] = (dense[slot * d + k] + coef * c) % p));
    rest += coef * constant;
  }
  dense[fixed] = ((rest % p) + p) % p;
  return packed(dense, p);
}

function insertDense(basis: Echelon, row: readonly number[], p: number): boolean {
  return basis.insert(packed(row, p));
}

function packed(dense: readonly number[], p: number): Vector {
  if (p !== 2) return Int32Array.from(dense);
  const words = new Uint32Array((dense.length + 31) >>> 5);
  dense.forEach((value, i) => {
    if (value === 1) words[i >>> 5] |= 1 << (i & 31);
  });
  return words;
}
