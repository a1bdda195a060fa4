import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, PileRef, PlaceRef } from '../phrases/values.ts';
import { mark } from '../pictures/actions.ts';
import { valueCounted } from './looking.ts';
import { defineMove, numberOf, pileName, pileSize, placeIndex, stuck } from './move.ts';

type WalkValuesArgs = { pile: PileRef; at: PlaceRef; courts?: NumberRef; mark: string };

const COURTS = '[, courts counting {courts:number}]';

/**
 * P76, S23: from a card one goes on as many cards as its value, from there as many as that one's, to the last that can be reached
 * (the Kruskal count; J. C. Lagarias, E. Rains and R. J. Vanderbei, The Kruskal count, 2001).
 */
export const walkValues = defineMove<WalkValuesArgs>({
  id: 'walk-values',
  procedures: ['P76'],
  hands: 'choose',
  title: 'walk along the values',
  phrases: [
    phrase(
      `walk along {pile:pile} by [the] values from {at:place}${COURTS}, call (the last card reached|the last card|where it ends) {mark:newname}`,
    ),
    phrase(
      `(follow|count along) the values (of|in) {pile:pile} from {at:place}${COURTS}, call (the last card reached|the last card|where it ends) {mark:newname}`,
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'From the card one goes on by as many cards as its value, and so on, until there are not enough cards left. The last card reached gets a name. Nothing moves.',
  caution:
    'Two walks that have met once stay together, but that they meet is only likely. Say what courts count.',
  synonyms: ['chain of values'],
  brings: ({ mark: name }) => ({ marks: [name] }),
  readings: ({ courts }) =>
    courts === undefined
      ? [{ word: 'values', taken: 'courts count 11, 12 and 13', other: 'Walk along ..., courts counting 10' }]
      : [],
  looks: {
    attributes: () => ['value'],
    bits: () => [],
    observe(args, table, view) {
      const pile = pileName(args.pile, view);
      const size = pileSize(args.pile, view);
      const courts = args.courts === undefined ? undefined : numberOf(args.courts, view);
      let at = placeIndex(args.at, size, view);
      if (at < 0 || at >= size) return 'no card';
      for (;;) {
        const value = valueCounted(table.cardAt(pile, at), courts);
        if (value === 0) return 'no value';
        if (at + value >= size) return at;
        at += value;
      }
    },
  },
  options(args, view) {
    const pile = pileName(args.pile, view);
    if (typeof view.seen !== 'number')
      return stuck(view.seen === 'no value' ? 'card-without-value' : 'no-such-card', {
        pile,
        size: pileSize(args.pile, view),
      });
    return [
      { key: view.seen + 1, actions: [mark(pile, view.seen, 1, args.mark, 'set')], next: null, off: 0 },
    ];
  },
  say: () => '',
  examples: [
    {
      before: '2C 3D 4S AH 2H 5C 6C',
      sentence: 'Walk along the packet by values from the 1st card, call the last card reached target.',
      choices: [],
      after: '2C 3D 4S AH 2H 5C 6C(target)',
    },
    {
      before: 'n = 2; KD QS AH JC 2H',
      sentence:
        'Walk along the packet by values from the Nth card, courts counting 1, call where it ends target.',
      choices: [],
      after: 'n = 2; KD QS AH JC 2H(target)',
    },
  ],
});
