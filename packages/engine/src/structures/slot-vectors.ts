import { nullspace } from '../base/nullspace.ts';
import type { Vector } from '../base/echelon.ts';
import type { Kernel } from '../proving/kernel.ts';
import type { Problem } from '../proving/problem.ts';
import type { Coordinates } from '../proving/space.ts';

/**
 * Vectors on which equations about slots are tested: an equation is certain when it holds on all of them. Each gives a number for every
 * slot and, in `one`, what the constant 1 is worth on it.
 */
export interface SlotVectors {
  readonly p: number;
  readonly slots: number;
  readonly list: readonly { readonly values: readonly number[]; readonly one: number }[];
}

/** How a measure is made of the columns of a problem. */
export type Reading = Coordinates;

/** With several readings all slots are read with the first, then all with the second. */
function read(
  { p, d, m, width }: Problem,
  readings: readonly Reading[],
  vectors: readonly ((index: number) => number)[],
): SlotVectors {
  const slots = (width - m) / d;
  const list = vectors.map((entry) => {
    const one = entry(slots * d);
    const values = readings.flatMap(({ columns, constant }) =>
      Array.from({ length: slots }, (_, s) => {
        let value = constant * one;
        for (let k = 0; k < d; k++) value += columns[k] * entry(s * d + k);
        return value % p;
      }),
    );
    return { values, one };
  });
  return { p, slots: slots * readings.length, list };
}

/**
 * Tables that were kept at a location, read as one number a slot. All linear relations of these numbers that hold on the tables are
 * certain there.
 */
export function fromTables(
  problem: Problem,
  kernel: Kernel,
  tables: readonly Vector[],
  readings: readonly Reading[] = [problem.space.measures[0]],
): SlotVectors {
  return read(
    problem,
    readings,
    tables.map((table) => (i: number) => kernel.entry(table, i)),
  );
}

/**
 * All that satisfies some needed equations (dense rows of `problem.width`), as a basis. An equation of the numbers read follows from the
 * needed ones exactly when it holds on these.
 */
export function fromNeed(
  problem: Problem,
  rows: readonly (readonly number[])[],
  readings: readonly Reading[] = [problem.space.measures[0]],
): SlotVectors {
  return read(
    problem,
    readings,
    nullspace(rows, problem.width, problem.p).map((row) => (i: number) => row[i]),
  );
}

/** Slots with equal numbers share a class; `opposite` is the class of slots whose numbers add up to the constant, over two elements. */
export interface SlotClasses {
  readonly of: readonly number[];
  readonly opposite: readonly number[];
}

export function classesOf({ slots, list, p }: SlotVectors): SlotClasses {
  const ids = new Map<string, number>();
  const id = (key: string): number => {
    let found = ids.get(key);
    if (found === undefined) ids.set(key, (found = ids.size));
    return found;
  };
  const of: number[] = [];
  const opposite: number[] = [];
  for (let s = 0; s < slots; s++) {
    of.push(id(list.map(({ values }) => values[s]).join()));
    opposite.push(p === 2 ? id(list.map(({ values, one }) => values[s] ^ one).join()) : -1);
  }
  return { of, opposite };
}
