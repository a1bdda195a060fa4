import { inverse } from '../base/echelon.ts';
import type { Pattern } from './form.ts';
import type { SlotRow } from './found.ts';
import type { SlotClasses, SlotVectors } from './slot-vectors.ts';
import type { Subject } from './subject.ts';

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

/** The sum, step or count with which the pattern holds on every vector, 0 where it has none; null where it does not hold. */
export function valueOf(
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
      if (subject.single === true) return value === 1 ? 1 : null;
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

export function rowsOf(pattern: Pattern, value: number, p: number, slots: readonly number[]): SlotRow[] {
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
