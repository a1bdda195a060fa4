import { inverse } from '../base/echelon.ts';
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
  const used = readings.map(({ columns, constant }) => ({
    constant,
    columns: columns.flatMap((times, k) => (times === 0 ? [] : [{ times, k }])),
  }));
  const list = vectors.map((entry) => {
    const one = entry(slots * d);
    const values = new Array<number>(slots * readings.length);
    let at = 0;
    for (const { columns, constant } of used)
      for (let s = 0; s < slots; s++) {
        let value = constant * one;
        for (const { times, k } of columns) value += times * entry(s * d + k);
        values[at++] = value % p;
      }
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
 * All that satisfies some needed equations (dense rows of `problem.width`), as vectors that span it. An equation of the numbers read
 * follows from the needed ones exactly when it holds on these. Each member of the family has constants of its own, and may be measured
 * the other way round.
 */
export function fromNeed(
  problem: Problem,
  rows: readonly (readonly number[])[],
  readings: readonly Reading[] = [problem.space.measures[0]],
  turned: readonly boolean[] = [],
): SlotVectors {
  const { p, width, m, members } = problem;
  const fixed = width - m;
  const free: number[][] = [];
  const bound: { row: number[]; pivot: number }[] = [];
  for (const found of nullspace(rows, width, p)) {
    const row = [...found];
    for (const { row: by, pivot } of bound) subtract(row, by, row[pivot], p);
    const pivot = row.findIndex((value, i) => i >= fixed && value !== 0);
    if (pivot < 0) free.push(row);
    else {
      const scale = inverse(row[pivot], p);
      bound.push({ row: row.map((value) => (value * scale) % p), pivot });
    }
  }
  const entry = (row: readonly number[]) => (i: number) => row[i];
  const first = read(problem, readings, free.map(entry));
  const list = [...first.list];
  members.forEach(({ constants }, t) => {
    const made = new Array<number>(width).fill(0);
    const left = [...constants];
    for (const { row, pivot } of bound) {
      const times = left[pivot - fixed];
      for (let i = 0; i < width; i++) made[i] = (made[i] + times * row[i]) % p;
      for (let j = 0; j < m; j++) left[j] = (((left[j] - times * row[fixed + j]) % p) + p) % p;
    }
    // Else nothing satisfies the equations for this member.
    if (left.some((value) => value !== 0)) return;
    const own = turned[t] ? readings.map((reading) => denied(reading, p)) : readings;
    list.push(...read(problem, own, [entry(made)]).list);
  });
  return { ...first, list };
}

/** One less what is read. */
export function denied({ columns, constant }: Reading, p: number): Reading {
  return { columns: columns.map((c) => (p - c) % p), constant: (p + 1 - constant) % p };
}

function subtract(from: number[], row: readonly number[], times: number, p: number): void {
  if (times === 0) return;
  for (let k = 0; k < from.length; k++) from[k] = (from[k] + (p - times) * row[k]) % p;
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
  const ones = keyOf(list.length, p, (v) => list[v].one);
  for (let s = 0; s < slots; s++) {
    const key = keyOf(list.length, p, (v) => list[v].values[s]);
    of.push(id(key.join()));
    opposite.push(p === 2 ? id(key.map((word, i) => word ^ ones[i]).join()) : -1);
  }
  return { of, opposite };
}

/** Numbers below p, over two elements 30 to a word. */
function keyOf(length: number, p: number, at: (v: number) => number): number[] {
  if (p !== 2) return Array.from({ length }, (_, v) => at(v));
  const words: number[] = [];
  for (let v = 0; v < length; v += 30) {
    let word = 0;
    for (let i = v; i < length && i < v + 30; i++) word = (word << 1) | at(i);
    words.push(word);
  }
  return words;
}
