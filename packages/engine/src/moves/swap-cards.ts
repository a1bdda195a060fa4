import { trouble } from '../base/diagnostic.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { PileRef, PlaceRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import { defineMove, pileName, pileSize, placeIndex, stuck } from './move.ts';

type SwapCardsArgs = { pile: PileRef; one: PlaceRef; other: PlaceRef };

/** P18: two cards exchange places without turning; a pair swapped so breaks the tie between place and face. */
export const swapCards = defineMove<SwapCardsArgs>({
  id: 'swap-cards',
  procedures: ['P18'],
  hands: 'order',
  title: 'exchange two cards',
  phrases: [
    phrase('(exchange|swap) {one:place} and {other:place} [of {pile:pile}]'),
    phrase('(exchange|swap) {one:place} (with|for) {other:place} [of {pile:pile}]'),
    phrase('(exchange|swap) the top two [cards] [of {pile:pile}]', {
      one: { end: 'top', n: 1 },
      other: { end: 'top', n: 2 },
    }),
    phrase('(exchange|swap) the top and bottom cards [of {pile:pile}]', {
      one: { end: 'top', n: 1 },
      other: { end: 'bottom', n: 1 },
    }),
  ],
  defaults: { pile: 'packet' },
  help: 'Two cards of a pile change places. Neither is turned.',
  caution: 'Turning a pair over as a block also exchanges its cards, but changes their faces.',
  synonyms: ['swap'],
  check: ({ one, other }) => (same(one, other) ? [trouble('same-card-twice')] : []),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const places = [placeIndex(args.one, size, view), placeIndex(args.other, size, view)];
    const [high, low] = [Math.min(...places), Math.max(...places)];
    if (high < 0 || low >= size) return stuck('no-such-card', { pile, size });
    const actions =
      high === low ? [] : [carry(pile, low, 1, pile, high), carry(pile, high + 1, 1, pile, low)];
    return [{ key: 'swapped', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2^ 3 4',
      sentence: 'Exchange the top card and the 2nd card.',
      choices: [],
      after: '2^ 1 3 4',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Swap the 2nd card and the bottom card.',
      choices: [],
      after: '1 5 3 4 2',
    },
  ],
});
