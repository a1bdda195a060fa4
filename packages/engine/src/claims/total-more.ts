import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { ANY } from './kinds.ts';
import { notNumbers } from './numeric-check.ts';
import { slotsIn } from './piles.ts';
import { between, minus } from './sums.ts';
import { totalOf } from './totals.ts';

type TotalMoreArgs = { p: PileRef; q: PileRef; attribute: string };

/** C12: one pile adds up to more than another. */
export const totalMore = defineClaim<TotalMoreArgs>({
  id: 'total-more',
  endings: ['C12'],
  title: 'totals more',
  phrases: [phrase('{p:pile} totals more than {q:pile} [in {attribute:numeric}]')],
  defaults: { attribute: 'value' },
  help: 'The values of one pile add up to more than those of another.',
  caution: 'A comparison is no equation: it costs an exact search. A pile that is not there totals 0.',
  synonyms: ['higher total'],
  attributes: ({ attribute }) => [attribute],
  check: ({ attribute }, cards) => notNumbers(attribute, cards),
  meaning({ p, q, attribute }, exit) {
    const one = slotsIn(p, exit);
    if (!one.ok) return one;
    const two = slotsIn(q, exit);
    if (!two.ok) return two;
    return means(
      between(
        minus(totalOf(attribute, ANY, one.value, exit), totalOf(attribute, ANY, two.value, exit)),
        1,
        undefined,
      ),
    );
  },
  examples: [
    { table: 'pile 1: AS 9H; pile 2: QC', sentence: 'Pile 2 totals more than pile 1.', holds: true },
    { table: 'pile 1: 3S 9H; pile 2: QC', sentence: 'Pile 1 totals more than pile 2.', holds: false },
  ],
});
