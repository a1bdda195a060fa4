import { lettersIn } from '../phrases/blanks/spot.ts';
import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { dealSingly, named } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type DealLettersArgs = { pile: PileRef; word: string; to: PileRef };

/** P41: a word is spelled, one card being dealt for each letter. */
export const dealLetters = defineMove<DealLettersArgs>({
  id: 'deal-letters',
  procedures: ['P41'],
  hands: 'deal',
  title: 'spell and deal',
  phrases: [
    phrase(
      '(deal|count) (one|1|a) card [from {pile:pile}] [(to|onto) {to:newpile}] for each letter of {word:word}',
    ),
    phrase(
      'spell {word:word} [with {pile:pile}], (dealing|counting) (one|1|a) card [(to|onto) {to:newpile}] for each letter',
    ),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help: 'A word is spelled and for each letter one card is dealt from the top, each on the one before. Spaces count nothing.',
  caution:
    'Say afterwards whether the card of the last letter counts, now on top of the heap, or the next one.',
  synonyms: ['spell'],
  brings: ({ to }) => ({ piles: named(to) }),
  readings: ({ word }) => [
    { word: 'letter', taken: `${lettersIn(word)} cards, spaces not counted`, other: 'Deal ... cards' },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const letters = lettersIn(args.word);
    if (letters > size) return stuck('not-enough-cards', { pile, size, wanted: letters });
    return [
      { key: letters, actions: dealSingly(pile, letters, pileName(args.to, view)), next: null, off: 0 },
    ];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6',
      sentence: 'Deal one card to the table for each letter of "lamp".',
      choices: [],
      after: 'packet: 5 6; table: 4 3 2 1',
    },
    {
      before: '1 2 3 4',
      sentence: 'Spell "tea", dealing one card for each letter.',
      choices: [],
      after: 'packet: 4; table: 3 2 1',
    },
  ],
});
