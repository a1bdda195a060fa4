import { phrase } from '../phrases/phrase.ts';
import type { Kind, NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { ANY, attributesOf, isNobody } from './kinds.ts';
import { notNumbers } from './numeric-check.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';
import { totalOf } from './totals.ts';

type TotalIsArgs = { kind: Kind; t: NumberRef; attribute: string; pile?: PileRef };

/** C12: values add up to a number. */
export const totalIs = defineClaim<TotalIsArgs>({
  id: 'total-is',
  endings: ['C12'],
  title: 'values total so much',
  phrases: [
    phrase('{kind:those} [(in|of) {pile:pile}] total {t:number} [in {attribute:numeric}]'),
    phrase('{pile:pile} totals {t:number} [in {attribute:numeric}]', { kind: ANY }),
    phrase('the values of {kind:those} [(in|of) {pile:pile}] (total|add up to) {t:number}'),
    phrase('the values of {pile:pile} (total|add up to) {t:number}', { kind: ANY }),
    phrase('{kind:those} [(in|of) {pile:pile}] add up to {t:number} [in {attribute:numeric}]'),
  ],
  defaults: { attribute: 'value' },
  help: 'The values of these cards add up to a number: ace 1, jack 11, queen 12, king 13 unless the note says otherwise. An attribute of your own that is a number may be added up instead.',
  caution: 'Cards of the whole table are added up unless a pile is named.',
  synonyms: ['add up to', 'sum'],
  attributes: ({ kind, attribute }) => [...attributesOf(kind), attribute],
  check: ({ attribute }, cards) => notNumbers(attribute, cards),
  meaning({ kind, t, attribute, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    return means(
      equals(totalOf(attribute, kind, slots.value, exit), numberAt(t, exit)),
      isNobody(kind, exit.cards),
    );
  },
  examples: [
    { table: 'AS^ 9H 10C^', sentence: 'The face-up cards total 11.', holds: true },
    { table: 'pile 1: AS 9H; pile 2: QC', sentence: 'The values of pile 2 total 12.', holds: true },
    { table: 'pile 1: AS 9H; pile 2: QC', sentence: 'The red cards in pile 1 total 10.', holds: false },
  ],
});
