import type { Block, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { mark } from '../pictures/actions.ts';
import { cardCount } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { chooseNumber, isOpen } from './open.ts';

type TurnEachArgs = { pile: PileRef; block: Block; how: 'over' | 'face up' | 'face down' };

/** P14: several cards, each turned in its own place, so that the order is kept. */
export const turnEach = defineMove<TurnEachArgs>({
  id: 'turn-each',
  procedures: ['P14'],
  hands: 'turn',
  title: 'turn cards one by one in place',
  phrases: [
    phrase('turn each of {block:block} [of {pile:pile}] {how=over|face up|face down} in place'),
    phrase(
      'turn {block:block} [of {pile:pile}] {how=over|face up|face down} (singly|one by one|one at a time) in place',
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'Each of these cards is turned over where it lies. The order is kept.',
  caution: 'Turned together as a block their order would be reversed.',
  synonyms: [],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const { end, cards } = args.block;
    const op = args.how === 'over' ? 'toggle' : args.how === 'face up' ? 'set' : 'clear';
    return chooseNumber(cards, args.pile, view, (n) => {
      const at = end === 'top' ? 0 : pileSize(args.pile, view) - n;
      return { actions: n === 0 ? [] : [mark(pile, at, n, 'up', op)], next: null };
    });
  },
  say: ({ block }, [n]) => {
    if (!isOpen(block.cards)) return '';
    return n === 0 ? 'turns nothing' : `turns ${cardCount(Number(n))}`;
  },
  examples: [
    {
      before: '1 2 3^ 4',
      sentence: 'Turn each of the top 3 cards over in place.',
      choices: [],
      after: '1^ 2^ 3 4',
    },
    {
      before: '1 2^ 3',
      sentence: 'Turn the bottom 2 cards face up one by one in place.',
      choices: [],
      after: '1 2^ 3^',
    },
  ],
});
