import { echelonOver, inverse, type Echelon, type Vector } from '../base/echelon.ts';
import type { Layout } from '../pictures/layout.ts';
import type { Form, Pattern, Variant } from './form.ts';
import { FORMS } from './forms.ts';
import { classesOf, type SlotClasses, type SlotVectors } from './slot-vectors.ts';
import type { Subject } from './subject.ts';
import { Ties } from './ties.ts';

/** A structure that was found in a pile, or in two. */
export interface Found {
  readonly form: string;
  readonly variant: string;
  readonly trade: string;
  readonly subject: string;
  /** In what: `colour`, `facing`. */
  readonly relation: string;
  readonly piles: readonly string[];
  /** Two or three words for margins. */
  readonly name: string;
  /** What is true of the pile or piles, in a sentence without its end. */
  readonly words: string;
  readonly pattern: Pattern;
  readonly ring: boolean;
  /** Sum, step or count; 0 for others. */
  readonly value: number;
  /** Number of independent equations it stands for. */
  readonly rank: number;
  /** Its equations: weights by slot of the table, and the total. */
  readonly rows: readonly SlotRow[];
}

export interface SlotRow {
  readonly weights: readonly (readonly [number, number])[];
  readonly total: number;
}

/**
 * Structures of every pile and of every two that follow from what holds on the vectors, the strongest first; those that follow from
 * stronger ones are left out, and so is what only says what `isTrivial` does.
 */
export function recognise(
  vectors: SlotVectors,
  layout: Layout,
  subject: Subject,
  isTrivial: (row: SlotRow) => boolean = () => false,
): Found[] {
  return folded(structuresIn(vectors, layout, subject), vectors, isTrivial);
}

/** All of them, those too that follow from others. */
export function structuresIn(vectors: SlotVectors, layout: Layout, subject: Subject): Found[] {
  if (vectors.list.length === 0) return [];
  const classes = PAIRED.has(subject.is) ? classesOf(vectors) : { of: [], opposite: [] };
  const piles = slotsOfPiles(layout);
  const cards = layout.sizes.reduce((sum, size) => sum + size, 0);
  const all: Found[] = [];
  const look = (form: Form, some: readonly Pile[]): void => {
    if (form.whole === true && some[0].slots.length < cards) return;
    const slots = slotsFor(subject, some, cards);
    for (const variant of variantsOf(form, some[0].slots.length, subject, some[1]?.slots.length ?? 0)) {
      const found = test(form, variant, vectors, classes, slots, some, subject);
      if (found !== null) all.push(found);
    }
  };
  for (const form of FORMS) {
    if (!form.fits(subject)) continue;
    for (const [i, pile] of piles.entries())
      if (form.piles === 1) look(form, [pile]);
      else if (piles.length <= MOST_PILES) for (const other of piles.slice(i + 1)) look(form, [pile, other]);
  }
  return all;
}

const made = new WeakMap<Subject, Map<string, readonly Variant[]>>();

/** Every moment with piles of these sizes asks for the same. */
function variantsOf(form: Form, n: number, subject: Subject, m: number): readonly Variant[] {
  let known = made.get(subject);
  if (known === undefined) made.set(subject, (known = new Map<string, readonly Variant[]>()));
  const key = `${form.id} ${n} ${m}`;
  let variants = known.get(key);
  if (variants === undefined) known.set(key, (variants = form.variants(n, subject, m)));
  return variants;
}

/** Subjects of which pairs are told. */
const PAIRED: ReadonlySet<Subject['is']> = new Set<Subject['is']>(['class', 'two cards', 'one off']);

/** Two cards are read on every slot one after the other: the places of a pile come twice. */
function slotsFor({ is }: Subject, piles: readonly Pile[], cards: number): readonly number[] {
  const slots = piles.flatMap((pile) => pile.slots);
  return is === 'two cards' ? [...slots, ...slots.map((slot) => slot + cards)] : slots;
}

// Two by two, more piles than this make more lines than anybody reads.
const MOST_PILES = 8;

interface Pile {
  readonly name: string;
  readonly slots: readonly number[];
}

function slotsOfPiles({ names, sizes }: Layout): Pile[] {
  let first = 0;
  return names.flatMap((name, i): Pile[] => {
    const slots = Array.from({ length: sizes[i] }, (_, k) => first + k);
    first += sizes[i];
    // Small piles in the middle of a mix have names of their own that nobody says.
    return name.startsWith('~') ? [] : [{ name, slots }];
  });
}

function test(
  form: Form,
  variant: Variant,
  vectors: SlotVectors,
  classes: SlotClasses,
  slots: readonly number[],
  piles: readonly Pile[],
  subject: Subject,
): Found | null {
  const { pattern } = variant;
  const value = valueOf(pattern, vectors, classes, slots, subject);
  if (value === null) return null;
  const names = piles.map(({ name }) => name);
  return {
    form: form.id,
    variant: variant.key,
    trade: subject.joinsFacing ? (JOINED[form.id] ?? form.trade) : form.trade,
    subject: subject.id,
    relation: subject.words.noun,
    piles: names,
    name: form.name(subject),
    words: variant.say(subject, value, names),
    pattern,
    ring: variant.ring,
    value,
    rank: 0,
    rows: rowsOf(pattern, value, vectors.p, slots),
  };
}

/** Whether equations about slots hold on all vectors. */
export function holdsOn(rows: readonly SlotRow[], { list, p }: SlotVectors): boolean {
  return rows.every(({ weights, total }) =>
    list.every(({ values, one }) => {
      let off = -total * one;
      for (const [slot, coef] of weights) off += coef * values[slot];
      return off % p === 0;
    }),
  );
}

/** Facing joined to a class has headings of its own. */
export const JOINED: Readonly<Record<string, string>> = { alternating: 'S6', 'all-alike': 'S7' };

/** The sum, step or count with which the pattern holds on every vector, 0 where it has none; null where it does not hold. */
function valueOf(
  pattern: Pattern,
  { list, p }: SlotVectors,
  { of, opposite }: SlotClasses,
  slots: readonly number[],
  subject: Subject,
): number | null {
  switch (pattern.of) {
    case 'pairs': {
      // That two cards are equally far apart where neither lies says nothing.
      if (
        subject.is === 'two cards' &&
        list.every(({ values }) => pattern.pairs.every(([a]) => values[slots[a]] === 0))
      )
        return null;
      const other = pattern.relation === 'alike' ? of : opposite;
      return pattern.pairs.every(([a, b]) => of[slots[a]] === other[slots[b]]) ? 0 : null;
    }
    case 'one of each':
      return pattern.groups.every((group) =>
        list.every(({ values, one }) => (sum(group, values, slots) - one) % p === 0),
      )
        ? 0
        : null;
    case 'same sum': {
      const value = common(
        list.flatMap(({ values, one }) =>
          pattern.groups.map((group) => ({ sum: sum(group, values, slots), one })),
        ),
        p,
      );
      return value === null ? null : wholeSum(value, pattern.groups[0].length, p, subject);
    }
    case 'balanced':
      return pattern.groups.every(({ plus, minus }) =>
        list.every(({ values }) => (sum(plus, values, slots) - sum(minus, values, slots)) % p === 0),
      )
        ? 0
        : null;
    case 'parity':
      return pattern.groups.every((group) =>
        list.every(({ values, one }) => (sum(group, values, slots) - pattern.odd * one) % p === 0),
      )
        ? 0
        : null;
    case 'total':
      return common(
        list.map(({ values, one }) => ({ sum: sum(pattern.places, values, slots), one })),
        p,
      );
    case 'same step':
      return common(
        list.flatMap(({ values, one }) =>
          pattern.pairs.map(([a, b]) => ({ sum: values[slots[b]] - values[slots[a]], one })),
        ),
        p,
      );
    case 'count': {
      const value = common(
        list.map(({ values, one }) => ({
          sum: sum(pattern.plus, values, slots) - sum(pattern.minus, values, slots),
          one,
        })),
        p,
      );
      if (value === null) return null;
      // That a card is not here or there says little.
      if (value === 0 && pattern.minus.length === 0) return null;
      return [value, value - p].find((k) => isWhole(k, pattern, p)) ?? null;
    }
  }
}

/** The one sum of so many numbers that is this in the field; null where there are several. */
function wholeSum(value: number, size: number, p: number, { bounds }: Subject): number | null {
  if (bounds === undefined) return value;
  const [low, high] = bounds.map((bound) => bound * size);
  const least = low + ((((value - low) % p) + p) % p);
  return least <= high && least + p > high ? least : null;
}

/** Whether the equation says the same in whole numbers as in the field: no other count within reach is alike. */
function isWhole(
  k: number,
  { plus, minus }: { readonly plus: readonly number[]; readonly minus: readonly number[] },
  p: number,
): boolean {
  return k <= plus.length && -k <= minus.length && plus.length - k < p && minus.length + k < p;
}

function sum(places: readonly number[], values: readonly number[], slots: readonly number[]): number {
  let total = 0;
  for (const place of places) total += values[slots[place]];
  return total;
}

/** The one number t with sum = t * one for all of them, modulo p; null where there is none. */
function common(sums: readonly { readonly sum: number; readonly one: number }[], p: number): number | null {
  let t: number | undefined;
  for (const { sum: s, one } of sums)
    if (one !== 0) {
      t = (((s % p) + p) * inverse(one, p)) % p;
      break;
    }
  if (t === undefined) return null;
  const found = t;
  return sums.every(({ sum: s, one }) => (s - found * one) % p === 0) ? found : null;
}

function rowsOf(pattern: Pattern, value: number, p: number, slots: readonly number[]): SlotRow[] {
  const at = (places: readonly number[], coef: number): (readonly [number, number])[] =>
    places.map((place) => [slots[place], coef] as const);
  switch (pattern.of) {
    case 'pairs':
      return pattern.pairs.map(([a, b]) => ({
        weights: [...at([a], 1), ...at([b], p - 1)],
        total: pattern.relation === 'alike' ? 0 : 1,
      }));
    case 'one of each':
      return pattern.groups.map((group) => ({ weights: at(group, 1), total: 1 }));
    case 'same sum':
      return pattern.groups.map((group) => ({ weights: at(group, 1), total: value % p }));
    case 'balanced':
      return pattern.groups.map(({ plus, minus }) => ({
        weights: [...at(plus, 1), ...at(minus, p - 1)],
        total: 0,
      }));
    case 'parity':
      return pattern.groups.map((group) => ({ weights: at(group, 1), total: pattern.odd }));
    case 'total':
      return [{ weights: at(pattern.places, 1), total: value }];
    case 'same step':
      return pattern.pairs.map(([a, b]) => ({ weights: [...at([b], 1), ...at([a], p - 1)], total: value }));
    case 'count':
      return [
        { weights: [...at(pattern.plus, 1), ...at(pattern.minus, p - 1)], total: ((value % p) + p) % p },
      ];
  }
}

/** A row as a vector over the slots and the constant. */
export function rowVector({ weights, total }: SlotRow, slots: number, p: number): Vector {
  const dense = new Int32Array(slots + 1);
  for (const [slot, coef] of weights) dense[slot] = (dense[slot] + coef) % p;
  dense[slots] = (((p - total) % p) + p) % p;
  if (p !== 2) return dense;
  const packed = new Uint32Array((slots + 1 + 31) >>> 5);
  dense.forEach((value, i) => {
    if (value === 1) packed[i >>> 5] |= 1 << (i & 31);
  });
  return packed;
}

/** The strongest first, without those that follow from what was told before. */
function folded(
  all: readonly Found[],
  { slots, p }: SlotVectors,
  isTrivial: (row: SlotRow) => boolean,
): Found[] {
  const ranked = all.map((found) => ({ ...found, rank: rankOf(found, slots, p) }));
  // What is said of one pile is plainer than what is said of two.
  const order = ranked
    .map((found, i) => ({ found, i }))
    .sort((a, b) => a.found.piles.length - b.found.piles.length || b.found.rank - a.found.rank || a.i - b.i);
  const told = echelonOver(p, slots + 1);
  const ties = new Ties(slots);
  for (const { rows } of all) addAll(told, rows.filter(isTrivial), slots, p);
  return order
    .filter(({ found }) => {
      const pairs = tiesIn(found);
      if (pairs?.every(([a, b, odd]) => ties.follows(a, b, odd)) === true) return false;
      pairs?.forEach(([a, b, odd]) => ties.tie(a, b, odd));
      return addAll(told, found.rows, slots, p) > 0;
    })
    .map(({ found }) => found);
}

/** The slots that a structure ties two by two; null for others. */
function tiesIn({ pattern, rows }: Found): (readonly [number, number, 0 | 1])[] | null {
  if (pattern.of !== 'pairs') return null;
  const odd = pattern.relation === 'opposite' ? 1 : 0;
  return rows.map(({ weights: [[a], [b]] }) => [a, b, odd] as const);
}

function rankOf(found: Found, slots: number, p: number): number {
  const pairs = tiesIn(found);
  if (pairs === null) return addAll(echelonOver(p, slots + 1), found.rows, slots, p);
  const ties = new Ties(slots);
  return pairs.filter(([a, b, odd]) => ties.tie(a, b, odd)).length;
}

/** How many of the rows were new. */
function addAll(basis: Echelon, rows: readonly SlotRow[], slots: number, p: number): number {
  let added = 0;
  for (const row of rows) if (basis.insert(rowVector(row, slots, p))) added++;
  return added;
}
