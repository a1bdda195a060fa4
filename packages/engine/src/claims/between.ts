import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE, or, type Formula } from './formula.ts';
import { attributesOf, notOneCard } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { isOneIn, positionOf } from './positions.ts';
import { between as within, minus, type Sum } from './sums.ts';

type BetweenArgs = { a: Kind; b: Kind; c: Kind; close: boolean; pile: PileRef };

/** C18: one card lies between two others. */
export const between = defineClaim<BetweenArgs>({
  id: 'between',
  endings: ['C18'],
  title: 'between two cards',
  phrases: [
    phrase('the {a:onekind} is directly between the {b:onekind} and the {c:onekind} [in {pile:pile}]', {
      close: true,
    }),
    phrase('the {a:onekind} is [somewhere] between the {b:onekind} and the {c:onekind} [in {pile:pile}]', {
      close: false,
    }),
  ],
  defaults: { pile: 'packet' },
  help: 'The chosen card lies below one of two other cards and above the other; directly between them when nothing else does.',
  caution:
    'All three cards must be in the pile. Which of the two is above is open, so this needs an exact search.',
  synonyms: ['between the keys'],
  attributes: ({ a, b, c }) => attributesOf(a, b, c),
  check: ({ a, b, c }, cards) => [a, b, c].flatMap((card) => notOneCard(card, cards)),
  meaning({ a, b, c, close, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const all = slots.value;
    if (all.length === 0) return means(FALSE);
    const [x, y, z] = [a, b, c].map((card) => positionOf(card, all, exit));
    const most = close ? 1 : undefined;
    const isOrder = (above: Sum, below: Sum): Formula =>
      and([within(minus(x, above), 1, most), within(minus(below, x), 1, most)]);
    return means(
      and([...[a, b, c].map((card) => isOneIn(card, all, exit)), or([isOrder(y, z), isOrder(z, y)])]),
    );
  },
  examples: [
    {
      table: '9H 10C(chosen) 4D',
      sentence: 'The chosen card is directly between the 9H and the 4D.',
      holds: true,
    },
    { table: '9H 2S 10C(chosen) 4D', sentence: 'The chosen card is between the 4D and the 9H.', holds: true },
    {
      table: '9H 2S 10C(chosen) 4D',
      sentence: 'The chosen card is directly between the 4D and the 9H.',
      holds: false,
    },
  ],
});
