import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { mark, type Action } from '../pictures/actions.ts';
import { dealSingly, named } from './handling.ts';
import { defineMove, numberOf, pileName, pileSize } from './move.ts';

type DealTurningArgs = {
  pile: PileRef;
  to?: PileRef;
  every: NumberRef;
  from: 'last of each' | 'first of each';
};

/** 0-based places, counted as the cards are handled, that are turned when every k-th one is. */
export function everyNth(size: number, every: number, from: DealTurningArgs['from']): number[] {
  const places: number[] = [];
  for (let i = from === 'first of each' ? 0 : every - 1; i < size; i += every) places.push(i);
  return places;
}

const FIRST = '(starting|beginning) with the first';

/** P15: all the cards are dealt into one heap, every second one turned over on the way. */
export const dealTurning = defineMove<DealTurningArgs>({
  id: 'deal-turning',
  procedures: ['P15'],
  hands: 'deal',
  title: 'deal, turning every second card',
  phrases: [
    phrase(
      'deal {pile:pile} [singly] into (a|one|a single) (pile|heap), turning every {every:nth} card [over]',
    ),
    phrase(
      `deal {pile:pile} [singly] into (a|one|a single) (pile|heap), turning every {every:nth} card [over], ${FIRST}`,
      {
        from: 'first of each',
      },
    ),
    phrase(
      'deal (all of|all|) [the] cards [singly] into (a|one|a single) (pile|heap), (turning [over]|turning) every {every:nth} card [over]',
    ),
    phrase('deal {pile:pile} [singly] (to|onto|on) {to:newpile}, turning every {every:nth} card [over]'),
    phrase(
      `deal {pile:pile} [singly] (to|onto|on) {to:newpile}, turning every {every:nth} card [over], ${FIRST}`,
      {
        from: 'first of each',
      },
    ),
    phrase(
      'deal [singly] (into (a|one|a single) (pile|heap)|(to|onto|on) {to:newpile}), turning every {every:nth} card [over]',
    ),
    phrase(
      `deal [singly] (into (a|one|a single) (pile|heap)|(to|onto|on) {to:newpile}), turning every {every:nth} card [over], ${FIRST}`,
      { from: 'first of each' },
    ),
  ],
  defaults: { pile: 'packet', from: 'last of each' },
  help: 'The cards are dealt one by one into one heap, every second one being turned over as it is dealt. The order is reversed.',
  caution:
    'Turning the 2nd, 4th and so on is meant unless the sentence starts with the first; the two differ by turning every card.',
  synonyms: ['turn alternate cards'],
  brings: ({ to }) => ({ piles: named(to) }),
  readings: ({ every, from }) => {
    if (from === 'first of each' || typeof every !== 'number') return [];
    const taken = `the ${every}${every === 2 ? 'nd' : every === 3 ? 'rd' : 'th'}, ${2 * every}th and so on are turned`;
    return [{ word: 'every', taken, other: 'Deal ..., starting with the first' }];
  },
  options(args, view) {
    const pile = pileName(args.pile, view);
    const to = args.to === undefined ? pile : pileName(args.to, view);
    const size = pileSize(args.pile, view);
    const turns = everyNth(size, numberOf(args.every, view), args.from);
    const actions: Action[] = turns.map((i) => mark(pile, i, 1, 'up', 'toggle'));
    return [{ key: 'all', actions: [...actions, ...dealSingly(pile, size, to)], next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet into a pile, turning every second card.',
      choices: [],
      after: '8^ 7 6^ 5 4^ 3 2^ 1',
    },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet into a pile, turning every second card, starting with the first.',
      choices: [],
      after: '8 7^ 6 5^ 4 3^ 2 1^',
    },
    {
      before: 'packet: 1 2 3 4 5; table: 6',
      sentence: 'Deal the packet onto the table, turning every third card over.',
      choices: [],
      after: 'table: 5 4 3^ 2 1 6',
    },
  ],
});
