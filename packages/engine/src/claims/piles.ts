import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import type { PileRef, PlaceRef } from '../phrases/values.ts';
import { allSlots, numberAt, pileAt, slotsOf, type Exit } from './claim.ts';

/** The pile a sentence means when it names none. */
export const PACKET = 'packet';

/**
 * The slots of a pile, top first; of the whole table when no pile is named. Where `packet` has no cards and one pile alone lies
 * on the table, that pile is meant; where several lie there the note must say which. A pile that is not there has no slots.
 */
export function slotsIn(pile: PileRef | undefined, exit: Exit): Result<readonly number[], Trouble> {
  if (pile === undefined) return good(allSlots(exit));
  const name = pileAt(pile, exit);
  const slots = slotsOf(name, exit);
  if (slots.length > 0 || name !== PACKET) return good(slots);
  const { names } = exit.layout;
  if (names.length > 1) return bad(trouble('which-pile', { piles: [...names] }));
  return good(allSlots(exit));
}

/** The slot of a place among the slots of its pile, or undefined when there is no such place. */
export function placeIn(place: PlaceRef, slots: readonly number[], exit: Exit): number | undefined {
  const n = numberAt(place.n, exit);
  return place.end === 'top' ? slots[n - 1] : slots[slots.length - n];
}

/** The piles `stem 1`, `stem 2`, ... in order of their numbers; where none is so called, every pile there is. */
export function numberedPiles(stem: string, exit: Exit): (readonly number[])[] {
  const numberOf = (name: string): number => {
    const [, said, n] = /^(.*) (\d+)$/.exec(name) ?? [];
    return said === stem ? Number(n) : -1;
  };
  const names = exit.layout.names
    .filter((name) => numberOf(name) >= 0)
    .sort((a, b) => numberOf(a) - numberOf(b));
  return (names.length > 0 ? names : exit.layout.names).map((name) => slotsOf(name, exit));
}
