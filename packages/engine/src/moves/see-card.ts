import { attributesOfKind, bitsOfKind, isOfKind } from '../phrases/of-kind.ts';
import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef, PlaceRef } from '../phrases/values.ts';
import { defineMove, pileName, pileSize, placeIndex, stuck } from './move.ts';
import { badName } from './name-number.ts';
import { answered, whether, yesOrNo, type Wording } from './seeing.ts';

type SeeCardArgs = { pile: PileRef; at: PlaceRef; is: Kind; call: string };

export const SEE_CARD: readonly Wording[] = [
  { template: '{at:place} [(of|in) {pile:pile}] is {is:onestate}' },
  { template: '{at:place} [(of|in) {pile:pile}] (shows|turns out to be) {is:onestate}' },
];

/** P77: whether the card at a place is of a kind. */
export const seeCard = defineMove<SeeCardArgs>({
  id: 'see-card',
  procedures: ['P77'],
  hands: 'choose',
  title: 'see what a card is',
  phrases: SEE_CARD.map((wording) => phrase(whether(wording))),
  defaults: { pile: 'packet' },
  help: 'The card at a place is looked at in full view. The answer is kept as a number: 1 if it is so, 0 if not.',
  caution: 'What is seen is seen by everybody, unless it is done in secret.',
  synonyms: ['look at the top card'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  looks: {
    attributes: ({ is }) => attributesOfKind(is),
    bits: ({ is }) => bitsOfKind(is),
    observe(args, table, view) {
      const pile = pileName(args.pile, view);
      const size = pileSize(args.pile, view);
      const i = placeIndex(args.at, size, view);
      if (i < 0 || i >= size) return 'no card';
      return yesOrNo(isOfKind(args.is, table.cardAt(pile, i), (bit) => table.bitAt(pile, i, bit)));
    },
  },
  open: true,
  options(args, view) {
    if (typeof view.seen !== 'number')
      return stuck('no-such-card', { pile: pileName(args.pile, view), size: pileSize(args.pile, view) });
    return answered(args.call, view.seen === 1);
  },
  say: () => '',
  examples: [
    {
      before: '4H 5S',
      sentence: 'See whether the top card is red, call it K.',
      choices: [],
      after: 'k = 1; 4H 5S',
    },
    {
      before: 'packet: 4H; pile 2: 5S 6D^',
      sentence: 'See whether the bottom card of pile 2 is face down, call the answer K.',
      choices: [],
      after: 'k = 0; packet: 4H; pile 2: 5S 6D^',
    },
  ],
});
