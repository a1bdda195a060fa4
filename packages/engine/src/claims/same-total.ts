import { phrase } from '../phrases/phrase.ts';
import type { Groups, PileRef, Tally } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { gather } from './gather.ts';
import { ANY, attributesOf } from './kinds.ts';
import { notNumbers } from './numeric-check.ts';
import { slotsIn } from './piles.ts';
import { equals, minus } from './sums.ts';
import { totalOf } from './totals.ts';

type SameTotalArgs = { p?: PileRef; q?: PileRef; a?: Tally; b?: Tally; groups?: Groups; attribute: string };

/** C12: cards here and there add up to the same. */
export const sameTotal = defineClaim<SameTotalArgs>({
  id: 'same-total',
  endings: ['C12'],
  title: 'the same total',
  phrases: [
    phrase('{p:pile} and {q:pile} have the same total [in {attribute:numeric}]'),
    phrase('{groups:groups} has the same total [in {attribute:numeric}]'),
    phrase('{a:tally} total as much as {b:tally} [in {attribute:numeric}]'),
  ],
  defaults: { attribute: 'value' },
  help: 'Two piles, every pair, block or pile, or two kinds of cards add up to the same number, whatever that is.',
  caution: 'Ace is 1, jack 11, queen 12, king 13 unless the note says otherwise.',
  synonyms: ['equal sums'],
  attributes: ({ a, b, attribute }) => [...attributesOf(a?.kind, b?.kind), attribute],
  check: ({ attribute }, cards) => notNumbers(attribute, cards),
  meaning({ p, q, a, b, groups, attribute }, exit) {
    if (groups !== undefined) {
      const found = gather(groups, exit);
      if (!found.ok) return found;
      const { sets, isThere } = found.value;
      if (!isThere) return means(FALSE);
      const sums = sets.map((slots) => totalOf(attribute, ANY, slots, exit));
      return means(and(sums.slice(1).map((sum, i) => equals(minus(sum, sums[i]), 0))), sets.length < 2);
    }
    const one = slotsIn(a === undefined ? p : a.pile, exit);
    if (!one.ok) return one;
    const two = slotsIn(b === undefined ? q : b.pile, exit);
    if (!two.ok) return two;
    const [x, y] = [
      totalOf(attribute, a?.kind ?? ANY, one.value, exit),
      totalOf(attribute, b?.kind ?? ANY, two.value, exit),
    ];
    return means(equals(minus(x, y), 0));
  },
  examples: [
    { table: 'pile 1: AS 9H; pile 2: 10C', sentence: 'Pile 1 and pile 2 have the same total.', holds: true },
    { table: 'AS KH 9D 5C', sentence: 'Every pair has the same total.', holds: true },
    { table: 'AS^ KH^ 9D 5C', sentence: 'Red cards total as much as black cards.', holds: false },
    { table: 'AS^ KH^ 9D 5C', sentence: 'Face-up cards total as much as face-down cards.', holds: true },
  ],
});
