import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { dealSingly, named } from './handling.ts';
import { marked } from './looking.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';
import { lettersOfCard, OF, OF_SAID, type OfWord } from './spell-card.ts';

type SpellNameArgs = { pile: PileRef; to: PileRef; mark: string; of: OfWord };

const TARGET = '[from {pile:pile}] [(to|onto) {to:newpile}]';

/** P41: the name of a noted card spelled, whichever card it is. */
export const spellName = defineMove<SpellNameArgs>({
  id: 'spell-name',
  procedures: ['P41'],
  hands: 'deal',
  title: 'spell the noted card',
  phrases: [
    phrase(
      `spell the name of {mark:mark} [by dealing|(dealing|counting) (one|a|1) card for each letter] ${TARGET} ${OF}`,
    ),
    phrase(
      `spell the name of {mark:mark} ${OF_SAID} [by dealing|(dealing|counting) (one|a|1) card for each letter] ${TARGET}`,
    ),
    phrase(`deal (one|a|1) card for each letter of the name of {mark:mark} ${TARGET} ${OF}`),
  ],
  defaults: { pile: 'packet', to: 'table', of: 'with of' },
  help: 'One card is dealt for each letter of the noted card\u2019s name. The last letter\u2019s card ends on top of the dealt cards.',
  caution:
    'Names of cards have ten to fifteen letters in English. The card is looked at, so its name may be any of those that the set-up allows.',
  synonyms: ['spell to your card'],
  brings: ({ to }) => ({ piles: named(to) }),
  readings: ({ of }) => [
    {
      word: 'of',
      taken: of === 'with of' ? '"of" is spelled' : '"of" is left out',
      other: `Spell the name of ..., ${of === 'with of' ? 'without of' : 'with of'}`,
    },
  ],
  looks: {
    attributes: () => ['name'],
    bits: ({ mark }) => [mark],
    observe({ mark, of }, table) {
      const card = marked(mark, table);
      return card === undefined ? 0 : lettersOfCard(card.name, of);
    },
  },
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const count = Number(view.seen);
    if (count === 0) return stuck('no-letters', { mark: args.mark });
    if (count > size) return stuck('not-enough-cards', { pile, size });
    return [{ key: count, actions: dealSingly(pile, count, pileName(args.to, view)), next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'packet: 1 2 3 4 5 6 7 8 9 10 11 12; hand: AC(chosen)',
      sentence: 'Spell the name of chosen.',
      choices: [],
      after: 'hand: AC(chosen); packet: 11 12; table: 10 9 8 7 6 5 4 3 2 1',
    },
    {
      before: 'packet: 1 2 3 4 5 6 7 8 9 10 11 12; hand: AC(chosen)',
      sentence: 'Spell the name of chosen, without of, to the pocket.',
      choices: [],
      after: 'hand: AC(chosen); packet: 9 10 11 12; pocket: 8 7 6 5 4 3 2 1',
    },
  ],
});
