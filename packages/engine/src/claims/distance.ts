import { phrase } from '../phrases/phrase.ts';
import type { Kind, NumberRef, PileRef } from '../phrases/values.ts';
import { defineClaim, means, numberAt } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { attributesOf, notOneCard } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { isBelowGoingRound, isOneIn, positionOf } from './positions.ts';
import { equals, minus } from './sums.ts';

type DistanceArgs = { a: Kind; b: Kind; d: NumberRef; round: boolean; pile: PileRef };

/** C18: one card lies so many places below another. */
export const distance = defineClaim<DistanceArgs>({
  id: 'distance',
  endings: ['C18'],
  title: 'so many places from the key',
  phrases: [
    phrase('the {a:onekind} is (directly|just) below the {b:onekind} [in {pile:pile}]', {
      d: 1,
      round: false,
    }),
    phrase('the {a:onekind} is {d:number} (places|cards|place|card) below the {b:onekind} [in {pile:pile}]', {
      round: false,
    }),
    phrase(
      'going round the {a:onekind} is {d:number} (places|cards|place|card) below the {b:onekind} [in {pile:pile}]',
      { round: true },
    ),
    phrase('the {b:onekind} is (directly|just) above the {a:onekind} [in {pile:pile}]', {
      d: 1,
      round: false,
    }),
    phrase('the {b:onekind} is {d:number} (places|cards|place|card) above the {a:onekind} [in {pile:pile}]', {
      round: false,
    }),
    phrase(
      'going round the {b:onekind} is {d:number} (places|cards|place|card) above the {a:onekind} [in {pile:pile}]',
      { round: true },
    ),
  ],
  defaults: { round: false, pile: 'packet' },
  help: 'The chosen card lies so many places below the key card. Going round, the top card follows the bottom card.',
  caution:
    'Both cards must be in the pile, or the sentence is false. A cut keeps a distance only going round.',
  synonyms: ['key card'],
  attributes: ({ a, b }) => attributesOf(a, b),
  check: ({ a, b }, cards) => [...notOneCard(a, cards), ...notOneCard(b, cards)],
  meaning({ a, b, d, round, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const all = slots.value;
    if (all.length === 0) return means(FALSE);
    const by = numberAt(d, exit);
    const isApart = round
      ? isBelowGoingRound(a, b, by, all, exit)
      : equals(minus(positionOf(a, all, exit), positionOf(b, all, exit)), by);
    return means(and([isOneIn(a, all, exit), isOneIn(b, all, exit), isApart]));
  },
  examples: [
    { table: '9H 10C 4D(chosen) 2S', sentence: 'The chosen card is directly below the 10C.', holds: true },
    { table: '9H 10C 4D 2S', sentence: 'The 9H is 3 places above the 2S.', holds: true },
    { table: '9H 10C 4D 2S', sentence: 'Going round, the 9H is 1 place below the 2S.', holds: true },
    { table: '9H 10C 4D 2S', sentence: 'The 9H is 1 card below the 2S.', holds: false },
  ],
});
