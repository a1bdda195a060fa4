import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { slotsIn } from './piles.ts';
import { allAgree, attributesIn } from './traits.ts';

type RepeatArgs = { relation: string; k: NumberRef; pile: PileRef };

/** C11: a row of values comes again and again. */
export const repeat = defineClaim<RepeatArgs>({
  id: 'repeat',
  endings: ['C11'],
  title: 'repeat every so many',
  phrases: [phrase('the {relation:relations} [(of|in) {pile:pile}] repeat every {k:number} [cards]')],
  defaults: { pile: 'packet' },
  help: 'Cards so many places apart are alike in suit, colour, value, and so on, all through the pile: a rotation of suits repeats every 4.',
  caution: 'It is not said that the values within one round differ.',
  synonyms: ['rotation', 'period'],
  attributes: ({ relation }) => attributesIn(relation),
  meaning({ relation, k, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const all = slots.value;
    const period = numberAt(k, exit);
    if (all.length === 0 || period < 1) return means(FALSE);
    const again = all.slice(period).map((slot, i) => allAgree(relation, [all[i], slot], exit));
    return means(and(again), again.length === 0);
  },
  examples: [
    { table: 'AC 9H 3S 4D KC 2H 2S', sentence: 'The suits repeat every 4 cards.', holds: true },
    { table: 'r b b r b r', sentence: 'The colours repeat every 3.', holds: false },
  ],
});
