import type { PileRef } from '../phrases/values.ts';
import { lettersIn } from '../phrases/blanks/spot.ts';
import { phrase } from '../phrases/phrase.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { transferred, type Direction } from './transfer.ts';

type TransferLettersArgs = { pile: PileRef; word: string; way: Direction };

/** P9 with P41: a word is spelled, one card going from top to bottom for each letter. */
export const transferLetters = defineMove<TransferLettersArgs>({
  id: 'transfer-letters',
  procedures: ['P9', 'P41'],
  hands: 'cut',
  title: 'spell from top to bottom',
  phrases: [
    phrase(
      '(transfer|move|shift) (one|1|a) card {way=from the top to the bottom|from the bottom to the top} [of {pile:pile}] for each letter of {word:word}',
    ),
    phrase(
      'spell {word:word} [with {pile:pile}], (transferring|moving) (one|1|a) card {way=from the top to the bottom|from the bottom to the top} for each letter',
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'A word is spelled and for each letter one card goes from the top to the bottom. Spaces count nothing.',
  caution: 'Another language, a plural or an "of" changes the number of letters.',
  synonyms: ['spell'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const letters = lettersIn(args.word);
    const actions = transferred(pile, pileSize(args.pile, view), letters, args.way, true);
    return [{ key: letters, actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6',
      sentence: 'Transfer one card from top to bottom for each letter of "lamp".',
      choices: [],
      after: '5 6 1 2 3 4',
    },
    {
      before: '1 2 3 4',
      sentence: 'Spell "sea wind", moving one card from top to bottom for each letter.',
      choices: [],
      after: '4 1 2 3',
    },
  ],
});
