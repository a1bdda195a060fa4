import type { Block, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { chooseNumber, isOpen, turned, turnReading, type How } from './open.ts';

type TurnBlockArgs = { pile: PileRef; block: Block; how: How };

/** P13: cards at one end turned over together. A single card keeps its place. */
export const turnBlock = defineMove<TurnBlockArgs>({
  id: 'turn-block',
  procedures: ['P13'],
  hands: 'turn',
  title: 'turn a block over',
  phrases: [
    phrase(
      'turn over {block:block} [of {pile:pile}] [(together|as a block|as one)] [{how=sideways|end over end}]',
    ),
    phrase(
      'turn {block:block} [of {pile:pile}] over [(together|as a block|as one)] [{how=sideways|end over end}]',
    ),
    phrase(
      '(flip|flip over) {block:block} [of {pile:pile}] [(together|as a block|as one)] [{how=sideways|end over end}]',
    ),
  ],
  defaults: { pile: 'packet', how: 'sideways' },
  help: 'Cards at the top or the bottom are turned over together: their order is reversed and each shows its other side.',
  caution: 'Turning the same cards one by one in place would keep their order.',
  synonyms: ['turn over together', 'turn over as one'],
  readings: ({ block, how }) => {
    if (block.cards.of === 'exactly' && block.cards.n === 1) return turnReading(how);
    const together = {
      word: 'turn over',
      taken: 'together as one block, so that their order is reversed',
      other: 'Turn each of ... over in place',
    };
    return [together, ...turnReading(how)];
  },
  options(args, view) {
    const pile = pileName(args.pile, view);
    const { end, cards } = args.block;
    return chooseNumber(cards, args.pile, view, (n) => {
      const at = end === 'top' ? 0 : pileSize(args.pile, view) - n;
      return { actions: n === 0 ? [] : [carry(pile, at, n, pile, at, turned(args.how))], next: null };
    });
  },
  say: ({ block }, [n]) => {
    if (!isOpen(block.cards)) return '';
    return n === 0 ? 'turns nothing' : `turns ${cardCount(Number(n))}`;
  },
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Turn over the top 3 cards together.',
      choices: [],
      after: '3^ 2^ 1^ 4 5 6 7 8',
    },
    { before: '1 2 3^ 4', sentence: 'Turn over the bottom 2 cards.', choices: [], after: '1 2 4^ 3' },
    { before: '1 2 3', sentence: 'Turn the top card over.', choices: [], after: '1^ 2 3' },
    { before: '1 2', sentence: 'Turn over any number of cards from the top.', choices: [2], after: '2^ 1^' },
    { before: '1 2 3', sentence: 'Turn over the top 2 end over end.', choices: [], after: "2^' 1^' 3" },
  ],
});
