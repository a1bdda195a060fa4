import { cardWords, parseCardName, spelledLength } from '../cards/names.ts';
import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { dealSingly, named } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

export type OfWord = 'with of' | 'without of';
type SpellCardArgs = { pile: PileRef; to: PileRef; card: string; of: OfWord };

/** Letters of a card's name: `ten of clubs` has ten, or eight when `of` is left out; a name of one's own as it is written. */
export function lettersOfCard(name: string, of: OfWord): number {
  const pips = parseCardName(name);
  if (pips === null) return spelledLength(name);
  const words = cardWords(pips);
  return spelledLength(of === 'with of' ? words : words.replace(' of ', ' '));
}

export const OF_SAID = ', {of=with of|without of~leaving out of}';
export const OF = `[${OF_SAID}]`;
const TARGET = '[from {pile:pile}] [(to|onto) {to:newpile}]';

/** P41: the name of one stated card spelled, one card dealt for each letter. */
export const spellCard = defineMove<SpellCardArgs>({
  id: 'spell-card',
  procedures: ['P41'],
  hands: 'deal',
  title: 'spell a card',
  phrases: [
    phrase(
      `spell {card:pipcard} [by dealing|(dealing|counting) (one|a|1) card for each letter] ${TARGET} ${OF}`,
    ),
    phrase(
      `spell {card:pipcard} ${OF_SAID} [by dealing|(dealing|counting) (one|a|1) card for each letter] ${TARGET}`,
    ),
    phrase(`deal (one|a|1) card for each letter of {card:pipcard} ${TARGET} ${OF}`),
  ],
  defaults: { pile: 'packet', to: 'table', of: 'with of' },
  help: 'One card is dealt for each letter of the card\u2019s English name. The last letter\u2019s card ends on top of the dealt cards, the next card on top of the packet.',
  caution:
    'Say whether the last letter\u2019s card counts or the next one, and whether "of" is spelled. Another language has other letters.',
  synonyms: ['spell the name of a card'],
  brings: ({ to }) => ({ piles: named(to) }),
  readings: ({ card, of }) => [
    {
      word: 'of',
      taken: `"of" is ${of === 'with of' ? 'spelled' : 'left out'}: ${lettersOfCard(card, of)} letters`,
      other: `Spell ${card}, ${of === 'with of' ? 'without of' : 'with of'}`,
    },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const count = lettersOfCard(args.card, args.of);
    if (count > size) return stuck('not-enough-cards', { pile, size });
    return [{ key: count, actions: dealSingly(pile, count, pileName(args.to, view)), next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'packet: 1 2 3 4 5 6 7 8 9 10 11; hand: 10C',
      sentence: 'Spell the ten of clubs.',
      choices: [],
      after: 'hand: 10C; packet: 11; table: 10 9 8 7 6 5 4 3 2 1',
    },
    {
      before: 'packet: 1 2 3 4 5 6 7 8 9; hand: 10C',
      sentence: 'Spell the ten of clubs, without of, to pile 1.',
      choices: [],
      after: 'hand: 10C; packet: 9; pile 1: 8 7 6 5 4 3 2 1',
    },
  ],
});
