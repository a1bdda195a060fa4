import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { layOn } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type DealTwoHandsArgs = { pile: PileRef; drop: 'the first on the second' | 'the second on the first' };

const FIRST = '~first';
const SECOND = '~second';

/** P45: two hands dealt alternately, one dropped on the other: a strip-out with both halves reversed. */
export const dealTwoHands = defineMove<DealTwoHandsArgs>({
  id: 'deal-two-hands',
  procedures: ['P45'],
  hands: 'deal',
  title: 'deal two hands and drop one on the other',
  phrases: [
    phrase(
      'deal {pile:pile} alternately into two (hands|heaps|piles) and (drop|put|place) {drop=the first on the second|the second on the first}',
    ),
    phrase(
      'deal {pile:pile} into two (hands|heaps|piles) alternately and (drop|put|place) {drop=the first on the second|the second on the first}',
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'The cards go alternately to two hands, then one hand is dropped on the other: odd places and even places are parted.',
  caution: 'Both hands come out reversed, which stripping out every second card would not do.',
  synonyms: ['deal alternately'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const actions: Action[] = [];
    for (let i = 0; i < size; i++) actions.push(carry(pile, 0, 1, i % 2 === 0 ? FIRST : SECOND, 0));
    const [first, second] = [Math.ceil(size / 2), Math.floor(size / 2)];
    if (args.drop === 'the first on the second')
      actions.push(...layOn(SECOND, second, pile), ...layOn(FIRST, first, pile));
    else actions.push(...layOn(FIRST, first, pile), ...layOn(SECOND, second, pile));
    return [{ key: 'dealt', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet alternately into two hands and drop the first on the second.',
      choices: [],
      after: '7 5 3 1 8 6 4 2',
    },
  ],
});
