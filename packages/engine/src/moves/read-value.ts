import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, PileRef, PlaceRef } from '../phrases/values.ts';
import { valueCounted } from './looking.ts';
import { defineMove, numberOf, pileName, pileSize, placeIndex, stuck } from './move.ts';
import { badName } from './name-number.ts';

type ReadValueArgs = { pile: PileRef; at: PlaceRef; courts?: NumberRef; call: string };

/** P42: the value of a card is read and kept as a number; what follows may count as many cards. */
export const readValue = defineMove<ReadValueArgs>({
  id: 'read-value',
  procedures: ['P42'],
  hands: 'choose',
  title: 'read a value',
  phrases: [
    phrase('call the value of {at:place} [of {pile:pile}] {call:newname}[, courts counting {courts:number}]'),
    phrase(
      'read the value of {at:place} [of {pile:pile}][, courts counting {courts:number}], call it {call:newname}',
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'The value of one card is read and gets a name, so that later sentences can count that many cards.',
  caution: 'Ace counts 1 and courts 11, 12, 13 unless the set-up says otherwise.',
  synonyms: ['value count'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  looks: {
    attributes: () => ['value'],
    bits: () => [],
    observe(args, table, view) {
      const size = pileSize(args.pile, view);
      const i = placeIndex(args.at, size, view);
      if (i < 0 || i >= size) return 'no card';
      const card = table.cardAt(pileName(args.pile, view), i);
      const courts = args.courts === undefined ? undefined : numberOf(args.courts, view);
      return card.attributes.value === undefined ? 'no value' : valueCounted(card, courts);
    },
  },
  options(args, view) {
    const facts = { pile: pileName(args.pile, view), size: pileSize(args.pile, view) };
    if (typeof view.seen !== 'number')
      return stuck(view.seen === 'no card' ? 'no-such-card' : 'card-without-value', facts);
    return [{ key: view.seen, actions: [], next: null, off: 0, set: { [args.call]: view.seen } }];
  },
  say: () => '',
  examples: [
    {
      before: 'packet: 4H KS 2D; table: 7C',
      sentence: 'Call the value of the 2nd card N.',
      choices: [],
      after: 'n = 13; packet: 4H KS 2D; table: 7C',
    },
    {
      before: 'packet: 4H; table: 7C',
      sentence: 'Read the value of the top card of the table, call it K.',
      choices: [],
      after: 'k = 7; packet: 4H; table: 7C',
    },
    {
      before: 'QH 2S',
      sentence: 'Call the value of the top card N, courts counting 5.',
      choices: [],
      after: 'n = 5; QH 2S',
    },
  ],
});
