import type { Block, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { chooseNumber, isOpen } from './open.ts';

type RotateBlockArgs = { pile: PileRef; block: Block };

/** P20: a part of a pile turned round flat, such as the upper half. */
export const rotateBlock = defineMove<RotateBlockArgs>({
  id: 'rotate-block',
  procedures: ['P20'],
  hands: 'turn',
  title: 'rotate a part',
  phrases: [
    phrase('rotate {block:block} [of {pile:pile}] [on the table] [(half a turn|half way round|end for end)]'),
  ],
  defaults: { pile: 'packet' },
  help: 'Some cards at the top or the bottom are turned round flat by half a turn; only their ends are exchanged.',
  caution: 'A mix of cards pointing both ways loses what a single reversed end would show.',
  synonyms: [],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const { end, cards } = args.block;
    return chooseNumber(cards, args.pile, view, (n) => {
      const at = end === 'top' ? 0 : pileSize(args.pile, view) - n;
      return { actions: n === 0 ? [] : [carry(pile, at, n, pile, at, { spun: true })], next: null };
    });
  },
  say: ({ block }, [n]) => {
    if (!isOpen(block.cards)) return '';
    return n === 0 ? 'rotates nothing' : `rotates ${cardCount(Number(n))}`;
  },
  examples: [
    { before: '1 2 3 4', sentence: 'Rotate the top half of the packet.', choices: [], after: "1' 2' 3 4" },
    { before: "1 2' 3", sentence: 'Rotate the bottom 2 cards.', choices: [], after: "1 2 3'" },
  ],
});
