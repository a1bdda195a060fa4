import type { Exit } from './claim.ts';
import { and, FALSE, type Formula } from './formula.ts';
import { isKind } from './kinds.ts';
import { digits, isCardNumber } from './measures.ts';
import { equals, minus, total } from './sums.ts';

/** This very card lies in the slot: the digits of its number, which cost less than one reading for each card. */
export function isCard(id: number, slot: number, exit: Exit): Formula {
  const card = exit.cards.find((c) => c.id === id);
  if (card === undefined) return FALSE;
  return and(
    digits('name', exit.cards).map((digit) =>
      equals(
        total(digit, [slot], exit),
        digit.of(card, () => 0),
        2,
      ),
    ),
  );
}

/** A card of this name lies in the slot. */
export function isNamed(name: string, slot: number, exit: Exit): Formula {
  const ids = new Set(exit.cards.filter((card) => card.name === name).map((card) => card.id));
  const [id] = ids;
  return ids.size === 1 ? isCard(id, slot, exit) : isKind({ tests: [{ test: 'card', name }] }, slot, exit);
}

/**
 * These cards, in this order going round, are all there is in the slots: the first is there, and each card lies in a slot exactly
 * when its follower lies in the next.
 */
export function isRing(ids: readonly number[], slots: readonly number[], exit: Exit): Formula {
  const size = slots.length;
  const at = (id: number, list: readonly number[]): ReturnType<typeof total> =>
    total(isCardNumber(id), list, exit);
  const follows = ids.flatMap((id, k) =>
    slots.map((slot, i) =>
      equals(minus(at(id, [slot]), at(ids[(k + 1) % size], [slots[(i + 1) % size]])), 0, 2),
    ),
  );
  return and([equals(at(ids[0], slots), 1, 2), ...follows]);
}
