import type { Groups, PileRef } from '../phrases/values.ts';
import { sizeOf } from '../pictures/layout.ts';
import { numberedPiles } from './handling.ts';
import { numberOf, pileName, pileSize, placeIndex, type Key, type Option, type View } from './move.ts';

/**
 * Conditions: moves that look whether something is so and keep the answer as a number, 1 for yes and 0 for no. Each says its condition as
 * a list of wordings, for its own sentence (`See whether ..., call it K`) and for the blocks of a note (`If ...:`).
 */

/** The hidden number of a block's condition; no word can be its name. */
export const SEEN = '~seen';

export interface Wording {
  readonly template: string;
  readonly fixed?: Readonly<Record<string, string>>;
}

/** The sentence around a condition. */
export function whether({ template }: Wording): string {
  return `(see|look|check) whether ${template}, call (it|the answer) {call:newname}`;
}

/** The answer to a condition as the only way on. */
export function answered(call: string, isSo: boolean): readonly Option[] {
  return [{ key: isSo ? 'yes' : 'no', actions: [], next: null, off: 0, set: { [call]: isSo ? 1 : 0 } }];
}

export const yesOrNo = (isSo: boolean): Key => (isSo ? 1 : 0);

export interface PlaceOnTable {
  readonly pile: string;
  readonly place: number;
}

export interface Missing {
  readonly missing: { readonly pile: string; readonly size: number };
}

/** The places that are spoken of, or the pile in which one of them has no card. */
export function placesOf(groups: Groups, view: View): readonly PlaceOnTable[] | Missing {
  const missing = (pile: string): Missing => ({ missing: { pile, size: sizeOf(view.layout, pile) } });
  switch (groups.groups) {
    case 'ends':
      return numberedPiles(groups.stem, view.layout).map(({ name, size }) => ({
        pile: name,
        place: groups.end === 'top' ? 0 : size - 1,
      }));
    case 'end': {
      const size = pileSize(groups.pile, view);
      const count = numberOf(groups.size, view);
      if (count > size) return missing(pileName(groups.pile, view));
      return run(groups.pile, groups.end === 'top' ? 0 : size - count, count, view);
    }
    case 'spots': {
      const places = groups.spots.map(({ pile, place }) => ({
        pile: pileName(pile, view),
        place: placeIndex(place, pileSize(pile, view), view),
      }));
      const gap = places.find(({ pile, place }) => place < 0 || place >= sizeOf(view.layout, pile));
      return gap === undefined ? places : missing(gap.pile);
    }
    default:
      // Other groups are several at once, which a condition does not speak of.
      throw new Error(`places that are ${groups.groups}`);
  }
}

/** All places of a pile. */
export function wholePile(pile: PileRef, view: View): PlaceOnTable[] {
  return run(pile, 0, pileSize(pile, view), view);
}

function run(ref: PileRef, first: number, count: number, view: View): PlaceOnTable[] {
  const pile = pileName(ref, view);
  return Array.from({ length: count }, (_, i) => ({ pile, place: first + i }));
}
