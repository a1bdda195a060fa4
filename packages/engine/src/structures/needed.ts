import { echelonOver, type Vector } from '../base/echelon.ts';
import type { Card } from '../cards/card.ts';
import type { Layout } from '../pictures/layout.ts';
import type { Problem } from '../proving/problem.ts';
import type { Graph } from '../routine/graph.ts';
import { matched } from './match.ts';
import type { Found, SlotRow } from './found.ts';
import { recognise } from './recognise.ts';
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
  const { p, d, width, m } = problem;
  const fixed = width - m;
  const weights = (row: readonly number[]): Vector => packed(row.slice(0, fixed), p);
  const all = echelonOver(p, fixed);
  // Equations that contradict each other are no structure.
  if (rows.some((row) => !all.insert(weights(row)))) return { found: [], rest: rows, isAll: false };
  // The constants of an equation that follows are those that it has.
  const told = echelonOver(p, fixed);
  const found: Found[] = [];
  for (const { subject, readings, turned } of matched(problem, graph, cards, subjects)) {
    const vectors = fromNeed(problem, rows, readings, turned);
    for (const one of recognise(vectors, layout, subject)) {
      let isNew = false;
      for (const row of one.rows) if (told.insert(weightsOf(row, fixed / d, problem, readings))) isNew = true;
      if (isNew) found.push(one);
    }
  }
  const rest = rows.filter((row) => told.insert(weights(row)));
  return { found, rest, isAll: rest.length === 0 };
}

/** A structure's equation in the columns of the problem, without its constants. */
function weightsOf(
  { weights }: SlotRow,
  slots: number,
  { p, d }: Problem,
  readings: readonly Reading[],
): Vector {
  const dense = new Array<number>(slots * d).fill(0);
  for (const [at, coef] of weights) {
    const slot = at % slots;
    readings[Math.floor(at / slots)].columns.forEach(
      (c, k) => (dense[slot * d + k] = (dense[slot * d + k] + coef * c) % p),
    );
  }
  return packed(dense, p);
}

function packed(dense: readonly number[], p: number): Vector {
  if (p !== 2) return Int32Array.from(dense);
  const words = new Uint32Array((dense.length + 31) >>> 5);
  dense.forEach((value, i) => {
    if (value === 1) words[i >>> 5] |= 1 << (i & 31);
  });
  return words;
}
