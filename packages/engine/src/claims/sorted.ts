import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { ANY } from './kinds.ts';
import { notNumbers } from './numeric-check.ts';
import { slotsIn } from './piles.ts';
import { between, minus } from './sums.ts';
import { totalOf } from './totals.ts';

type SortedArgs = { way: string; attribute: string; pile: PileRef };

/** C11: values never go down, or never go up, from top to bottom. */
export const sorted = defineClaim<SortedArgs>({
  id: 'sorted',
  endings: ['C11'],
  title: 'ascending or descending',
  phrases: [
    phrase('the values [(of|in) {pile:pile}] {way=ascend|descend}'),
    phrase('{pile:pile} is in {way=ascend~ascending|descend~descending} order [of {attribute:numeric}]'),
    phrase('[in {attribute:numeric}] {pile:pile} {way=ascend~ascends|descend~descends}'),
  ],
  defaults: { attribute: 'value', pile: 'packet' },
  help: 'From top to bottom no value is less than the one before (ascend), or none is greater (descend). Equal values may follow one another.',
  caution:
    'A comparison is no equation: it costs an exact search. Where every value is known, say from which rank to which the pile runs.',
  synonyms: ['sorted'],
  attributes: ({ attribute }) => [attribute],
  check: ({ attribute }, cards) => notNumbers(attribute, cards),
  meaning({ way, attribute, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const all = slots.value;
    if (all.length === 0) return means(FALSE);
    const values = (way === 'ascend' ? all : [...all].reverse()).map((slot) =>
      totalOf(attribute, ANY, [slot], exit),
    );
    return means(
      and(values.slice(1).map((value, i) => between(minus(value, values[i]), 0, undefined))),
      all.length < 2,
    );
  },
  examples: [
    { table: 'AS 2H 2S 9D', sentence: 'The values ascend.', holds: true },
    { table: '9D 2H 3S', sentence: 'The values descend.', holds: false },
    { table: 'pile 1: 9D 2H; pile 2: 3S', sentence: 'Pile 1 is in descending order.', holds: true },
  ],
});
