import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, PileRef, PlaceRef } from '../phrases/values.ts';
import { dealSingly, named } from './handling.ts';
import { valueCounted } from './looking.ts';
import { defineMove, numberOf, pileName, pileSize, placeIndex, stuck } from './move.ts';

type DealValueArgs = {
  of: PileRef;
  at: PlaceRef;
  pile: PileRef;
  to: PileRef;
  upTo?: NumberRef;
  courts?: NumberRef;
};

const WHERE = '[from {pile:pile}] [(to|onto) {to:newpile}][, courts counting {courts:number}]';

/** P42: as many cards dealt as a card's value, or as many as are missing from it to ten or thirteen. */
export const dealValue = defineMove<DealValueArgs>({
  id: 'deal-value',
  procedures: ['P42'],
  hands: 'deal',
  title: 'deal by a value',
  phrases: [
    phrase(`deal as many cards as the value of {at:place} [of {of:pile}] ${WHERE}`),
    phrase(`deal from the value of {at:place} [of {of:pile}] up to {upTo:number} ${WHERE}`),
  ],
  defaults: { pile: 'packet', of: 'packet', to: 'table' },
  help: 'The value of a card is looked at, and so many cards are dealt singly; or the count goes on from the value up to ten, thirteen or another number, a card for each number said after it.',
  caution:
    'Say what courts count. Where the value is beyond the number that is counted up to, the performance cannot go on.',
  synonyms: ['deal up to ten'],
  brings: ({ to }) => ({ piles: named(to) }),
  looks: {
    attributes: () => ['value'],
    bits: () => [],
    observe(args, table, view) {
      const pile = pileName(args.of, view);
      const size = pileSize(args.of, view);
      const i = placeIndex(args.at, size, view);
      if (i < 0 || i >= size) return 'no card';
      const courts = args.courts === undefined ? undefined : numberOf(args.courts, view);
      const card = table.cardAt(pile, i);
      return card.attributes.value === undefined ? 'no value' : valueCounted(card, courts);
    },
  },
  options(args, view) {
    const facts = { pile: pileName(args.of, view), size: pileSize(args.of, view) };
    if (typeof view.seen !== 'number')
      return stuck(view.seen === 'no value' ? 'card-without-value' : 'no-such-card', facts);
    const upTo = args.upTo === undefined ? undefined : numberOf(args.upTo, view);
    const count = upTo === undefined ? view.seen : upTo - view.seen;
    if (count < 0) return stuck('number-below-nothing', { one: upTo ?? 0, other: view.seen });
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    if (count > size) return stuck('not-enough-cards', { pile, size });
    return [{ key: count, actions: dealSingly(pile, count, pileName(args.to, view)), next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'packet: 4H KS 2D 9C; table: 3C',
      sentence: 'Deal as many cards as the value of the top card of the table to the left.',
      choices: [],
      after: 'left: 2D KS 4H; packet: 9C; table: 3C',
    },
    {
      before: 'packet: 4H KS 2D 9C; table: 8C',
      sentence: 'Deal from the value of the top card of the table up to 10.',
      choices: [],
      after: 'packet: 2D 9C; table: KS 4H 8C',
    },
    {
      before: 'packet: 4H 2D 9C; hand: QC',
      sentence: 'Deal from the value of the top card of the hand up to 13, courts counting 11.',
      choices: [],
      after: 'hand: QC; packet: 9C; table: 2D 4H',
    },
  ],
});
