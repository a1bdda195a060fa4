import { trouble } from '../base/diagnostic.ts';
import { phrase } from '../phrases/phrase.ts';
import type { Kind, NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE, or, type Formula } from './formula.ts';
import { allAre, attributesOf, cardsOf, isNobody } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals, minus } from './sums.ts';
import { arePartition, eitherAt } from './two-classes.ts';

type TwoWaysArgs = { kind: Kind; other?: Kind; count?: NumberRef; pile?: PileRef };

const UP = { tests: [{ test: 'bit', bit: 'up' }] } as const;
const DOWN = { tests: [{ test: 'bit', bit: 'up', not: true }] } as const;

/** C3: one class of cards faces one way and all other cards the other way. */
export const twoWays = defineClaim<TwoWaysArgs>({
  id: 'two-ways',
  endings: ['C3'],
  title: 'one class one way, the rest the other',
  phrases: [
    phrase(
      '[in {pile:pile}] every {kind:onekind} faces one way and every {other:onekind} [faces] the other [way]',
    ),
    phrase('[in {pile:pile}] all {kind:class} face one way and all {other:class} [face] the other [way]'),
    phrase('[in {pile:pile}] all but the {count:number} {kind:class} face the same way'),
    phrase('[in {pile:pile}] all but {kind:those} face the same way'),
    phrase('[in {pile:pile}] all {kind:class} face one way and all other cards [face] the other [way]'),
  ],
  defaults: {},
  help: 'Cards of one kind face one way, the others the other way: which of the two ways is open. "All but the four aces face the same way" says that the aces face the other way.',
  caution:
    'Cards of neither kind may lie as they like. A number given with the kind must be the number of such cards.',
  synonyms: ['all but', 'one class one way'],
  attributes: ({ kind, other }) => attributesOf(kind, other),
  check({ kind, count }, cards) {
    const { least, most } = cardsOf(kind, cards);
    if (typeof count !== 'number' || (count >= least && count <= most)) return [];
    return [trouble('wrong-number', { said: count, cards: most })];
  },
  meaning({ kind, other, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length === 0) return means(FALSE);
    if (other === undefined || arePartition(kind, other, exit.cards)) {
      const sums = slots.value.map((slot) => eitherAt(UP, kind, slot, exit));
      return means(and(sums.slice(1).map((sum, i) => equals(minus(sum, sums[i]), 0, 2))));
    }
    const lie = (one: Kind, two: Kind): Formula =>
      and([allAre(kind, one, slots.value, exit), allAre(other, two, slots.value, exit)]);
    return means(
      or([lie(UP, DOWN), lie(DOWN, UP)]),
      isNobody(kind, exit.cards) && isNobody(other, exit.cards),
    );
  },
  examples: [
    {
      table: 'r^ b r^ b',
      sentence: 'Every red card faces one way and every black card the other.',
      holds: true,
    },
    {
      table: 'r b^ r b^',
      sentence: 'Every red card faces one way and every black card the other.',
      holds: true,
    },
    {
      table: 'r b^ r^ b',
      sentence: 'All red cards face one way and all black cards the other.',
      holds: false,
    },
    { table: 'AS^ 9H AH^ 4D', sentence: 'All but the 2 aces face the same way.', holds: true },
    { table: 'AS^ 9H^ AH^ 4D', sentence: 'All but the aces face the same way.', holds: false },
  ],
});
