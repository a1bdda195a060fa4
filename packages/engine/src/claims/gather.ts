import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import type { Groups } from '../phrases/values.ts';
import { numberAt, type Exit, type Meaning } from './claim.ts';
import { and, FALSE, type Formula } from './formula.ts';
import { numberedPiles, placeIn, slotsIn } from './piles.ts';

/** Slots taken together, what custom left out, and whether all that was named is there. */
export interface Gathered {
  readonly sets: readonly (readonly number[])[];
  readonly asides: readonly Trouble[];
  readonly isThere: boolean;
}

const ABSENT: Gathered = { sets: [], asides: [], isThere: false };

function gathered(sets: readonly (readonly number[])[], left = 0, size = 1): Gathered {
  const asides = left === 0 ? [] : [trouble('left-over', { left, size })];
  return { sets, asides, isThere: true };
}

/**
 * The cards that a way of grouping takes together. Cards left over after the last complete block, the middle card of an odd
 * number in mirror pairs and what one of two piles has more than the other belong to no group, which `asides` says.
 */
export function gather(groups: Groups, exit: Exit): Result<Gathered, Trouble> {
  if (groups.groups === 'piles') return good(gathered(numberedPiles(groups.stem, exit)));
  if (groups.groups === 'ends')
    return good(
      gathered([
        numberedPiles(groups.stem, exit).map((pile) => pile[groups.end === 'top' ? 0 : pile.length - 1]),
      ]),
    );
  if (groups.groups === 'spots') {
    const set: number[] = [];
    for (const { place, pile } of groups.spots) {
      const slots = slotsIn(pile, exit);
      if (!slots.ok) return slots;
      const slot = placeIn(place, slots.value, exit);
      if (slot === undefined) return good(ABSENT);
      set.push(slot);
    }
    return good(gathered([set]));
  }
  const found = slotsIn(groups.pile, exit);
  if (!found.ok) return found;
  const slots = found.value;
  const n = slots.length;
  if (n === 0) return good(ABSENT);
  switch (groups.groups) {
    case 'end': {
      const size = numberAt(groups.size, exit);
      if (size < 1 || size > n) return good(ABSENT);
      return good(gathered([groups.end === 'top' ? slots.slice(0, size) : slots.slice(n - size)]));
    }
    case 'blocks':
      return good(blocks(slots, numberAt(groups.size, exit), groups.from));
    case 'parts':
      return good(n % groups.parts === 0 ? blocks(slots, n / groups.parts, 'top') : ABSENT);
    case 'mirror':
      return good(
        gathered(
          range(Math.floor(n / 2)).map((i) => [slots[i], slots[n - 1 - i]]),
          n % 2,
          2,
        ),
      );
    case 'halfway':
      return good(n % 2 === 0 ? gathered(range(n / 2).map((i) => [slots[i], slots[i + n / 2]])) : ABSENT);
    case 'neighbours': {
      const pairs = range(n - 1).map((i) => [slots[i], slots[i + 1]]);
      return good(gathered(groups.round && n > 2 ? [...pairs, [slots[n - 1], slots[0]]] : pairs));
    }
    case 'across': {
      const other = slotsIn(groups.other, exit);
      if (!other.ok) return other;
      const opposite = groups.opposite ? [...other.value].reverse() : other.value;
      const size = Math.min(n, opposite.length);
      if (size === 0) return good(ABSENT);
      return good(
        gathered(
          range(size).map((i) => [slots[i], opposite[i]]),
          Math.max(n, opposite.length) - size,
          2,
        ),
      );
    }
  }
}

function blocks(slots: readonly number[], size: number, from: 'top' | 'bottom'): Gathered {
  if (size < 1) return ABSENT;
  const left = slots.length % size;
  const start = from === 'top' ? 0 : left;
  const sets = range(Math.floor(slots.length / size)).map((b) =>
    slots.slice(start + b * size, start + (b + 1) * size),
  );
  return gathered(sets, left, size);
}

function range(length: number): number[] {
  return Array.from({ length }, (_, i) => i);
}

/** What `say` says of every group; false when a pile or place named is not there, vacuous when there is no group. */
export function ofEvery(
  groups: Groups,
  exit: Exit,
  say: (slots: readonly number[]) => Formula,
): Result<Meaning, Trouble> {
  const found = gather(groups, exit);
  if (!found.ok) return found;
  const { sets, asides, isThere } = found.value;
  if (!isThere) return good({ formula: FALSE });
  return good({ formula: and(sets.map(say)), vacuous: sets.length === 0, asides });
}

/** A block or a pile that a sentence needs to be of another size. */
export function wrongSize(groups: Groups, kinds: number): Result<Meaning, Trouble> | null {
  if (groups.groups !== 'blocks' || typeof groups.size !== 'number' || groups.size === kinds) return null;
  return bad(trouble('one-of-each-size', { size: groups.size, kinds }));
}
