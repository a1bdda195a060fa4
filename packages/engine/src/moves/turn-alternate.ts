import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { mark } from '../pictures/actions.ts';
import { everyNth } from './deal-turning.ts';
import { defineMove, numberOf, pileName, pileSize } from './move.ts';

type TurnAlternateArgs = { pile: PileRef; every: NumberRef; from: 'last of each' | 'first of each' };

/** P16: every second card turned without reversing: in place, or by pushing the cards off one below the other. */
export const turnAlternate = defineMove<TurnAlternateArgs>({
  id: 'turn-alternate',
  procedures: ['P16'],
  hands: 'turn',
  title: 'turn every second card in place',
  phrases: [
    phrase('turn every {every:nth} card [of {pile:pile}] [over] in place'),
    phrase(
      'turn every {every:nth} card [of {pile:pile}] [over] in place, (starting|beginning) with the first',
      {
        from: 'first of each',
      },
    ),
    phrase('(push|spread|thumb) {pile:pile} from hand to hand, turning every {every:nth} card [over]'),
    phrase(
      '(push|spread|thumb) {pile:pile} from hand to hand, turning every {every:nth} card [over], (starting|beginning) with the first',
      {
        from: 'first of each',
      },
    ),
    phrase('turn over every {every:nth} card [of {pile:pile}] [in place]'),
  ],
  defaults: { pile: 'packet', from: 'last of each' },
  help: 'Every second card is turned over without changing the order, in a spread or from hand to hand.',
  caution: 'Turning the 2nd, 4th and so on is meant unless the sentence starts with the first.',
  synonyms: ['turn alternate cards in a spread', 'push off, turning every second card'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const turns = everyNth(pileSize(args.pile, view), numberOf(args.every, view), args.from);
    return [{ key: 'all', actions: turns.map((i) => mark(pile, i, 1, 'up', 'toggle')), next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Turn every second card over in place.',
      choices: [],
      after: '1 2^ 3 4^ 5 6^ 7 8^',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Push the packet from hand to hand, turning every other card, starting with the first.',
      choices: [],
      after: '1^ 2 3^ 4 5^',
    },
  ],
});
