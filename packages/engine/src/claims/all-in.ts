import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { allSlots, defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf, count, isNobody } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';

type AllInArgs = { kind: Kind; pile: PileRef };

/** C9: all cards of a kind are in one pile. */
export const allIn = defineClaim<AllInArgs>({
  id: 'all-in',
  endings: ['C9'],
  title: 'all are in one pile',
  phrases: [
    phrase('all {kind:kind} are [still] in {pile:pile}'),
    phrase('every {kind:onekind} is [still] in {pile:pile}'),
  ],
  defaults: {},
  help: 'No card of the kind lies outside this pile.',
  caution: 'Other cards may lie in the pile too; to exclude them say that the pile is all of the kind.',
  synonyms: ['every ace is in'],
  attributes: ({ kind }) => attributesOf(kind),
  meaning({ kind, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    const inside = new Set(slots.value);
    const outside = allSlots(exit).filter((slot) => !inside.has(slot));
    return means(
      and(outside.map((slot) => equals(count(kind, [slot], exit), 0, 2))),
      isNobody(kind, exit.cards),
    );
  },
  examples: [
    { table: 'pile 1: r r b; pile 2: b b', sentence: 'All red cards are in pile 1.', holds: true },
    { table: 'pile 1: AS 9H; pile 2: AH', sentence: 'Every ace is in pile 1.', holds: false },
  ],
});
