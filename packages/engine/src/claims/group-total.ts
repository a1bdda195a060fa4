import { phrase } from '../phrases/phrase.ts';
import type { Groups, NumberRef } from '../phrases/values.ts';
import { defineClaim, numberAt } from './claim.ts';
import { ofEvery } from './gather.ts';
import { ANY } from './kinds.ts';
import { notNumbers } from './numeric-check.ts';
import { equals } from './sums.ts';
import { totalOf } from './totals.ts';

type GroupTotalArgs = { groups?: Groups; places?: Groups; t: NumberRef; attribute: string };

/** C12: every pair, block or pile adds up to the same given number. */
export const groupTotal = defineClaim<GroupTotalArgs>({
  id: 'group-total',
  endings: ['C12'],
  title: 'every group totals so much',
  phrases: [
    phrase('{groups:groups} totals {t:number} [in {attribute:numeric}]'),
    phrase('{groups:groups} adds up to {t:number} [in {attribute:numeric}]'),
    phrase('the values of {groups:groups} (total|add up to) {t:number}'),
    phrase('{places:places} total {t:number} [in {attribute:numeric}]'),
    phrase('{places:places} add up to {t:number} [in {attribute:numeric}]'),
  ],
  defaults: { attribute: 'value' },
  help: 'The values of every pair, block, half or pile, or of the places named, add up to a number: every mirror pair totals 14.',
  caution:
    'Cards left over after the last complete block are not added up, nor is the middle card of mirror pairs.',
  synonyms: ['complementary pairs'],
  attributes: ({ attribute }) => [attribute],
  check: ({ attribute }, cards) => notNumbers(attribute, cards),
  meaning({ groups, places, t, attribute }, exit) {
    const together = groups ?? places;
    // One of the two is in every phrase.
    if (together === undefined) throw new Error('a total of no cards');
    return ofEvery(together, exit, (slots) =>
      equals(totalOf(attribute, ANY, slots, exit), numberAt(t, exit)),
    );
  },
  examples: [
    { table: 'AS KH 9D 5C', sentence: 'Every pair totals 14.', holds: true },
    { table: 'AS 9H 5D KC', sentence: 'Every mirror pair totals 14.', holds: true },
    { table: 'pile 1: AS 9H; pile 2: 10C', sentence: 'Each pile totals 10.', holds: true },
    { table: 'pile 1: AS 9H; pile 2: 10C', sentence: 'The top cards of the piles total 12.', holds: false },
  ],
});
