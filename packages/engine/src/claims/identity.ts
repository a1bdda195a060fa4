import type { Exit } from './claim.ts';
import { and, FALSE, type Formula } from './formula.ts';
import { isKind } from './kinds.ts';
import { digits } from './measures.ts';
import { equals, total } from './sums.ts';

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
