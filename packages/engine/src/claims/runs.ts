import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { ANY } from './kinds.ts';
import { notNumbers } from './numeric-check.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';
import { totalOf } from './totals.ts';

type RunsArgs = { from: number; to: number; pile: PileRef };

/** C11: a pile runs through the values in order. */
export const runs = defineClaim<RunsArgs>({
  id: 'runs',
  endings: ['C11'],
  title: 'in order, ace to king',
  phrases: [
    phrase('{pile:pile} runs from {from:rank} to {to:rank}'),
    phrase('{pile:pile} is in order from {from:rank} to {to:rank}'),
  ],
  defaults: {},
  help: 'From top to bottom the values follow one another from the first named to the last: ace to king, or king to ace.',
  caution: 'The pile has no other cards. Suits are not spoken of.',
  synonyms: ['in order'],
  attributes: () => ['value'],
  check: (_args, cards) => notNumbers('value', cards),
  meaning({ from, to, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length !== Math.abs(to - from) + 1) return means(FALSE);
    const way = to < from ? -1 : 1;
    return means(
      and(slots.value.map((slot, i) => equals(totalOf('value', ANY, [slot], exit), from + way * i))),
    );
  },
  examples: [
    { table: 'AS 2H 3S 4D', sentence: 'The packet runs from ace to 4.', holds: true },
    { table: 'pile 1: KS QH JS; pile 2: 4D', sentence: 'Pile 1 runs from king to jack.', holds: true },
    { table: 'AS 2H 4D 3S', sentence: 'The packet is in order from ace to four.', holds: false },
  ],
});
