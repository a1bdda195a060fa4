import type { Trouble } from '../base/diagnostic.ts';
import { good, type Result } from '../base/result.ts';
import type { Card } from '../cards/card.ts';
import type { Tally } from '../phrases/values.ts';
import type { Exit } from './claim.ts';
import { count, isNobody } from './kinds.ts';
import { slotsIn } from './piles.ts';
import type { Sum } from './sums.ts';

/** How many cards a tally counts. */
export function tallied({ kind, pile }: Tally, exit: Exit): Result<Sum, Trouble> {
  const slots = slotsIn(pile, exit);
  return slots.ok ? good(count(kind, slots.value, exit)) : slots;
}

export function bothNobody(a: Tally, b: Tally, cards: readonly Card[]): boolean {
  return isNobody(a.kind, cards) && isNobody(b.kind, cards);
}
