import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { DOWN_UNDER, downUnder, type DownUnder } from './down-under.ts';
import { layOn, PILE } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type HeapArgs = { pile: PileRef; order: DownUnder };

/** P37: the whole packet dealt down-under or under-down into a heap, to reorder it. */
export const downUnderHeap = defineMove<HeapArgs>({
  id: 'down-under-heap',
  procedures: ['P37'],
  hands: 'deal',
  title: 'reorder by down-under',
  phrases: [
    phrase(`deal ${PILE} ${DOWN_UNDER} into a (pile|heap)`),
    phrase(`deal ${PILE} ${DOWN_UNDER} [to the table] until (none is|none are|no card is|no cards are) left`),
    phrase(`${DOWN_UNDER} deal ${PILE} into a (pile|heap)`),
    phrase(`reorder ${PILE} by (a|an|) ${DOWN_UNDER} [deal]`),
  ],
  defaults: { pile: 'packet' },
  help: 'Cards go alternately to the table and beneath the packet until all are dealt. The last card ends on top of the heap, which is the packet again.',
  caution: 'From the bottom of the heap the cards lie in the order in which they were dealt.',
  synonyms: ['duck and deal'],
  readings: ({ order }) => [
    {
      word: order,
      taken: order === 'down-under' ? 'the first card goes to the table' : 'the first card goes beneath',
      other: `Deal the packet ${order === 'down-under' ? 'under-down' : 'down-under'} into a pile`,
    },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const actions = downUnder(pile, size, 0, args.order, '~dealt');
    return [{ key: args.order, actions: [...actions, ...layOn('~dealt', size, pile)], next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet down-under into a pile.',
      choices: [],
      after: '8 4 6 2 7 5 3 1',
    },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet under-down into a pile.',
      choices: [],
      after: '1 5 7 3 8 6 4 2',
    },
  ],
});
