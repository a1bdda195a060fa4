import { same } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import {
  pileName,
  pileSize,
  stuck,
  type Key,
  type Option,
  type Stuck,
  type TableView,
  type View,
} from './move.ts';

/** Pairs taken off the top of a pile and laid on one heap or another by what is seen of them. */

export function isTwice(refs: readonly PileRef[]): boolean {
  return refs.some((ref, i) => refs.slice(0, i).some((other) => same(ref, other)));
}

/** What is seen of the next pair; `none` where there is no pair left. */
export function seenPair(ref: PileRef, _table: TableView, view: View, look: (pile: string) => Key): Key {
  return pileSize(ref, view) < 2 ? 'none' : look(pileName(ref, view));
}

/** The next pair goes as one, its order kept, on the heap for what was seen. */
export function dealPair(
  ref: PileRef,
  view: View,
  heaps: Readonly<Record<string, string>>,
): readonly Option[] | Stuck {
  const pile = pileName(ref, view);
  const names = [pile, ...Object.values(heaps)];
  if (new Set(names).size < names.length) return stuck('pile-twice', { piles: names });
  const left = pileSize(ref, view);
  const heap = heaps[String(view.seen)];
  if (left < 2 || heap === undefined) return [{ key: 'none', actions: [], next: null, off: 0 }];
  const next = left - 2 < 2 ? null : 'going';
  return [{ key: String(view.seen), actions: [carry(pile, 0, 2, heap, 0)], next, off: 0 }];
}
