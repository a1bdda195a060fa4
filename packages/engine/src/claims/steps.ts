import { isPrime } from '../base/echelon.ts';
import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means, numberAt, type Exit } from './claim.ts';
import { and, FALSE, type Formula } from './formula.ts';
import { ANY } from './kinds.ts';
import { remainderIs } from './measures.ts';
import { notNumbers } from './numeric-check.ts';
import { slotsIn } from './piles.ts';
import { equals, minus, total } from './sums.ts';
import { totalOf } from './totals.ts';

type StepsArgs = { step: NumberRef; way: string; round: NumberRef; attribute: string; pile: PileRef };

/** Where the modulus makes no field: a value leaves a remainder exactly when the one before leaves the remainder before it. */
function byResidues(
  attribute: string,
  by: number,
  modulus: number,
  slots: readonly number[],
  exit: Exit,
): Formula {
  const remainders = new Set(exit.cards.map((card) => Number(card.attributes[attribute]) % modulus));
  const before = (remainder: number): number => (((remainder - by) % modulus) + modulus) % modulus;
  const asked = new Set([
    ...remainders,
    ...[...remainders].map((r) => (((r + by) % modulus) + modulus) % modulus),
  ]);
  return and(
    [...asked].flatMap((remainder) => {
      const [here, there] = [remainder, before(remainder)].map((r) => remainderIs(attribute, modulus, r));
      return slots
        .slice(1)
        .map((slot, i) => equals(minus(total(here, [slot], exit), total(there, [slots[i]], exit)), 0, 2));
    }),
  );
}

/** C11: values go up or down in equal steps, round and round. */
export const steps = defineClaim<StepsArgs>({
  id: 'steps',
  endings: ['C11'],
  title: 'values in equal steps',
  phrases: [
    phrase(
      'the values [(of|in) {pile:pile}] go {way=up|down} by {step:number} [each time] [counting round after {round:number}]',
    ),
    phrase(
      '[in {attribute:numeric}] {pile:pile} goes {way=up|down} by {step:number} [each time] [counting round after {round:number}]',
    ),
  ],
  defaults: { round: 13, attribute: 'value', pile: 'packet' },
  help: 'From top to bottom each value is so much more (or less) than the one before; after the king comes the ace again.',
  caution:
    'Values go round after 13 unless the sentence says after what number. Where the order begins is open, so a cut does no harm when the number of cards fits.',
  synonyms: ['cyclic order', 'ascending round and round'],
  attributes: ({ attribute }) => [attribute],
  check: ({ attribute }, cards) => notNumbers(attribute, cards),
  meaning({ step, way, round, attribute, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const all = slots.value;
    const modulus = numberAt(round, exit);
    if (all.length === 0 || modulus < 1) return means(FALSE);
    const by = numberAt(step, exit) * (way === 'up' ? 1 : -1);
    if (!isPrime(modulus)) return means(byResidues(attribute, by, modulus, all, exit), all.length < 2);
    const values = all.map((slot) => totalOf(attribute, ANY, [slot], exit));
    return means(
      and(values.slice(1).map((value, i) => equals(minus(value, values[i]), by, modulus))),
      all.length < 2,
    );
  },
  examples: [
    { table: 'AC 4H 7S 10D KC 3H', sentence: 'The values go up by 3.', holds: true },
    { table: '3C 2H AS KD', sentence: 'The values go down by 1 each time.', holds: true },
    {
      table: '9C 10H AS 2D',
      sentence: 'The values go up by 1 each time, counting round after 10.',
      holds: true,
    },
    { table: '9C 10H AS 2D', sentence: 'The values go up by 1.', holds: false },
  ],
});
