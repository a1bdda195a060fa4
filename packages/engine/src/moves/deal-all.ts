import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { showing, type Face } from './deal.ts';
import { dealSingly, named, PILE } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type DealAllArgs = { pile: PileRef; to?: PileRef; face?: Face };

/** P28: a whole pile dealt into one heap, which turns its order round. */
export const dealAll = defineMove<DealAllArgs>({
  id: 'deal-all',
  procedures: ['P28'],
  hands: 'deal',
  title: 'deal into one heap',
  phrases: [
    phrase(
      `(deal|count) ${PILE} [singly|one by one] [{face=face up|face down}] into (one|a single|a) (pile|heap)`,
    ),
    phrase(
      `(deal|count) ${PILE} [singly|one by one] into (one|a single|a) (pile|heap) {face=face up|face down}`,
    ),
    phrase(
      `(deal|count) ${PILE} [singly|one by one] (to|onto) {to:newpile} [singly] [{face=face up|face down}]`,
    ),
    phrase(`(deal|count) ${PILE} {face=face up|face down} (to|onto) {to:newpile}`),
    phrase(`(count through|reverse|reverse the order of|run all the cards of|reverse count) ${PILE}`),
    phrase(`count ${PILE} (from hand to hand|into the other hand)`),
  ],
  defaults: { pile: 'packet' },
  help: 'All the cards are dealt one at a time into one heap. The order is turned round, the faces stay as they are.',
  caution: 'Turning the packet over turns the order round as well, but shows the other sides.',
  synonyms: ['count through', 'reverse the order'],
  brings: ({ to }) => ({ piles: named(to) }),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const to = args.to === undefined ? pile : pileName(args.to, view);
    const size = pileSize(args.pile, view);
    return [
      {
        key: 'all',
        actions: [...dealSingly(pile, size, to), ...showing(args.face, to, size)],
        next: null,
        off: 0,
      },
    ];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet into a pile.',
      choices: [],
      after: '8 7 6 5 4 3 2 1',
    },
    {
      before: '1 2 3^',
      sentence: 'Deal the packet face up to the table.',
      choices: [],
      after: 'table: 3^ 2^ 1^',
    },
    { before: '1 2 3^', sentence: 'Count through the packet.', choices: [], after: '3^ 2 1' },
  ],
});
