import { attributesOfKind, bitsOfKind, isOfKind } from '../phrases/of-kind.ts';
import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineMove } from './move.ts';
import { badName } from './name-number.ts';
import { answered, whether, wholePile, yesOrNo, type Wording } from './seeing.ts';

type SeeInArgs = { card: Kind; pile: PileRef; not: 'in' | 'not in'; call: string };

export const SEE_IN: readonly Wording[] = [
  { template: '{card:thiscard} is {not=in~among the cards of|not in} {pile:pile}' },
  { template: '{card:thiscard} lies {not=in} {pile:pile}' },
];

/** P64, P69: whether a card lies in a pile, seen or said. */
export const seeIn = defineMove<SeeInArgs>({
  id: 'see-in',
  procedures: ['P64', 'P69'],
  hands: 'choose',
  title: 'see whether a card is in a pile',
  phrases: SEE_IN.map((wording) => phrase(whether(wording))),
  defaults: { not: 'in' },
  help: 'Whether such a card lies in the pile, as seen or as the spectator says. The answer is kept as a number: 1 if it is so, 0 if not.',
  caution: 'The answer is true, and everybody hears it.',
  synonyms: ['is your card here'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  looks: {
    attributes: ({ card }) => attributesOfKind(card),
    bits: ({ card }) => bitsOfKind(card),
    observe: (args, table, view) => {
      const isThere = wholePile(args.pile, view).some(({ pile, place }) =>
        isOfKind(args.card, table.cardAt(pile, place), (bit) => table.bitAt(pile, place, bit)),
      );
      return yesOrNo(isThere === (args.not === 'in'));
    },
  },
  open: true,
  options: (args, view) => answered(args.call, view.seen === 1),
  say: () => '',
  examples: [
    {
      before: 'pile 1: 1; pile 2: 2 3(chosen)',
      sentence: 'See whether chosen is in pile 2, call it K.',
      choices: [],
      after: 'k = 1; pile 1: 1; pile 2: 2 3(chosen)',
    },
    {
      before: 'pile 1: 10C; pile 2: 2',
      sentence: 'See whether the 10C is not in pile 1, call it K.',
      choices: [],
      after: 'k = 0; pile 1: 10C; pile 2: 2',
    },
  ],
});
