import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { layOn, PILE } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';

export type Above = 'top' | 'bottom';
type MilkArgs = { pile: PileRef; above: Above };

/** Top and bottom card together onto `to`, so many times; a single last card goes there by itself. */
export function milked(pile: string, size: number, pairs: number, above: Above, to: string): Action[] {
  const actions: Action[] = [];
  for (let left = size, pair = 0; pair < pairs && left > 0; pair++, left -= 2) {
    if (left === 1) actions.push(carry(pile, 0, 1, to, 0));
    else {
      const bottom = carry(pile, left - 1, 1, to, 0);
      const top = carry(pile, 0, 1, to, 0);
      // The card that is to lie above is laid second; once the top card has gone the bottom one is a place higher.
      if (above === 'top') actions.push(bottom, top);
      else actions.push(top, carry(pile, left - 2, 1, to, 0));
    }
  }
  return actions;
}

/** P34: top and bottom card drawn off together, pair upon pair, until none are left. */
export const milk = defineMove<MilkArgs>({
  id: 'milk',
  procedures: ['P34'],
  hands: 'mix',
  title: 'milk shuffle',
  phrases: [
    phrase(
      `(milk|milk-shuffle) ${PILE} [into a (pile|heap)|in pairs] [, the {above=top|bottom} card of each pair above]`,
    ),
    phrase(
      '(draw|take|milk) off the top and bottom (cards|card) of {pile:pile} together [, pair upon pair] [until none are left] [, the {above=top|bottom} card of each pair above]',
    ),
    phrase(`give ${PILE} a milk [shuffle]`),
  ],
  defaults: { pile: 'packet', above: 'top' },
  help: 'Top and bottom card are drawn off together onto the table, pair upon pair, to the end. The middle pair ends on top.',
  caution:
    'With an odd number the centre card ends single on top. In each pair the top card lies above, unless it is said otherwise.',
  synonyms: ['draw top and bottom together'],
  readings: ({ above }) => [
    {
      word: 'milk',
      taken: `the ${above} card of each pair lies above`,
      other: `Milk the packet, the ${above === 'top' ? 'bottom' : 'top'} card of each pair above`,
    },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const actions = milked(pile, size, size, args.above, '~milked');
    return [{ key: 'milk', actions: [...actions, ...layOn('~milked', size, pile)], next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    { before: '1 2 3 4 5 6 7 8', sentence: 'Milk the packet.', choices: [], after: '4 5 3 6 2 7 1 8' },
    { before: '1 2 3 4 5 6 7', sentence: 'Milk the packet.', choices: [], after: '4 3 5 2 6 1 7' },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Milk the packet, the bottom card of each pair above.',
      choices: [],
      after: '5 4 6 3 7 2 8 1',
    },
  ],
});
