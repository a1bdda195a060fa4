import { inverse } from '../base/echelon.ts';
import { applyOp } from '../pictures/effect.ts';
import type { Card } from '../cards/card.ts';
import type { Measure } from '../claims/formula.ts';

/** Values of one column at one slot for every kind of card and every setting of the bits that matter. */
export type Column = readonly number[];

/**
 * The smallest set of columns that can say what some measures say, whatever handling does to a card's bits. Over the field of
 * p elements, each measure is a combination of the columns and a constant, and handling maps columns to combinations of columns
 * and constants: `under(op)`. This is what makes every edge of the graph an affine map.
 */
export interface Space {
  readonly p: number;
  /** Columns a slot. */
  readonly d: number;
  /** Kinds of bits that matter to it. */
  readonly bits: readonly string[];
  readonly measures: readonly Coordinates[];
  /** Equal signatures mean that handling acts alike on the columns. */
  readonly signature: string;
  readonly under: (op: number) => OpMap;
  /** Whether `under` can say what an operation does that was not given when the space was made. */
  readonly isClosedUnder: (op: number) => boolean;
  /** The d column values of a card with these bits. */
  readonly valuesOf: (card: Card, bits: number) => readonly number[];
}

/** A function as a combination of the columns, plus a constant. */
export interface Coordinates {
  readonly columns: readonly number[];
  readonly constant: number;
}

/** Column k after handling, as a combination of the columns before. */
export type OpMap = readonly Coordinates[];

/** Only the two-bit fields of the kinds of bits that matter. */
export function maskFor(kinds: readonly number[]): number {
  return kinds.reduce((mask, kind) => mask | (3 << (2 * kind)), 0) >>> 0;
}

function mod(value: number, p: number): number {
  return ((value % p) + p) % p;
}

/**
 * Builds the space of some measures over the field of p elements.
 * @param ops every operation on bits that occurs in the routine's graph
 * @param bitIndex number of a kind of bit, as the graph numbers them
 */
export function spaceOf(
  measures: readonly Measure[],
  p: number,
  cards: readonly Card[],
  ops: readonly number[],
  bitIndex: (bit: string) => number,
): Space {
  const bits = [...new Set(measures.flatMap((m) => m.bits))].sort();
  const kinds = bits.map(bitIndex);
  const settings = 1 << bits.length;
  const mask = maskFor(kinds);

  // A function is the list of its values on (card, setting); cards that all measures treat alike share one place.
  const classOf = new Map<string, number>();
  const classes: number[][] = [];
  // By the card itself: cards that differ only in an attribute left open share their number.
  const cardClass = new Map<Card, number>();
  for (const card of cards) {
    const profile = measures.flatMap((m) =>
      Array.from({ length: settings }, (_, s) => m.of(card, (bit) => (s >> bits.indexOf(bit)) & 1)),
    );
    const key = profile.join();
    let index = classOf.get(key);
    if (index === undefined) classOf.set(key, (index = classes.push(profile) - 1));
    cardClass.set(card, index);
  }
  const size = classes.length * settings;
  const functionOf = (m: number): number[] =>
    Array.from({ length: size }, (_, i) =>
      mod(classes[Math.floor(i / settings)][m * settings + (i % settings)], p),
    );

  // An opened basis: `reduced` for finding coordinates, `columns` as the functions themselves; entry 0 is the constant 1.
  const columns: number[][] = [];
  const reduced: { row: number[]; pivot: number; as: number[] }[] = [];
  const reduce = (f: readonly number[]): { rest: number[]; as: number[] } => {
    const rest = [...f];
    const as = new Array<number>(columns.length + 1).fill(0);
    for (const { row, pivot, as: made } of reduced) {
      const times = rest[pivot];
      if (times === 0) continue;
      for (let i = 0; i < size; i++) rest[i] = mod(rest[i] - times * row[i], p);
      made.forEach((c, i) => (as[i] = mod(as[i] + times * c, p)));
    }
    return { rest, as };
  };
  const coordinates = (f: readonly number[], keep: boolean): number[] => {
    const { rest, as } = reduce(f);
    const pivot = rest.findIndex((value) => value !== 0);
    if (pivot < 0) return as;
    if (!keep) throw new Error('a function outside the closed space: the operations were not all given');
    // rest = f - sum(as): so the new row, scaled, is the new column minus what was taken away.
    const scale = inverse(rest[pivot], p);
    const self = columns.push([...f]) - 1;
    const made = as.map((c) => mod(-c * scale, p));
    made[self] = scale;
    reduced.push({ row: rest.map((value) => mod(value * scale, p)), pivot, as: made });
    const unit = new Array<number>(columns.length).fill(0);
    unit[self] = 1;
    return unit;
  };
  const handled = (f: readonly number[], op: number): number[] => {
    const map = settingMap(op, kinds);
    return f.map((_, i) => f[i - (i % settings) + map[i % settings]]);
  };
  const relevant = [...new Set(ops.map((op) => (op & mask) >>> 0))]
    .filter((op) => op !== 0)
    .sort((a, b) => a - b);
  coordinates(new Array<number>(size).fill(1), true);
  const asked = measures.map((_, m) => functionOf(m));
  for (const f of asked) coordinates(f, true);
  for (let k = 1; k < columns.length; k++)
    for (const op of relevant) coordinates(handled(columns[k], op), true);

  const d = columns.length - 1;
  const split = (as: readonly number[]): Coordinates => ({
    constant: as[0] ?? 0,
    columns: Array.from({ length: d }, (_, k) => as[k + 1] ?? 0),
  });
  const maps = new Map<number, OpMap>();
  const under = (op: number): OpMap => {
    const known = maps.get((op & mask) >>> 0);
    if (known !== undefined) return known;
    const map = columns.slice(1).map((column) => split(coordinates(handled(column, op & mask), false)));
    maps.set((op & mask) >>> 0, map);
    return map;
  };
  const actions = relevant.map((op) => [under(op), d === 0 ? '' : op]);
  return {
    p,
    d,
    bits,
    measures: asked.map((f) => split(coordinates(f, false))),
    signature: JSON.stringify([p, d, actions]),
    under,
    isClosedUnder: (op) =>
      columns
        .slice(1)
        .every((column) => reduce(handled(column, (op & mask) >>> 0)).rest.every((value) => value === 0)),
    valuesOf(card, cardBits) {
      let setting = 0;
      kinds.forEach((kind, i) => (setting |= ((cardBits >>> kind) & 1) << i));
      const kind = cardClass.get(card);
      // Tables are made of the cards the space was made over.
      if (kind === undefined)
        throw new Error(`the card ${card.name} is none of those the space was made over`);
      const at = kind * settings + setting;
      return columns.slice(1).map((column) => column[at]);
    },
  };
}

/** Where each setting of the bits goes under an operation. */
function settingMap(op: number, kinds: readonly number[]): number[] {
  return Array.from({ length: 1 << kinds.length }, (_, s) =>
    kinds.reduce((after, kind, i) => after | (applyOp((s >> i) & 1, (op >>> (2 * kind)) & 3) << i), 0),
  );
}
