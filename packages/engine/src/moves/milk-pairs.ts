import { trouble } from '../base/diagnostic.ts';
import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase, same } from '../phrases/phrase.ts';
import { decided, named } from './handling.ts';
import { milked, type Above } from './milk.ts';
import { allowed, defineMove, pileName, pileSize, stuck } from './move.ts';
import { isOpen } from './open.ts';

type MilkPairsArgs = { pile: PileRef; pairs: Amount; above: Above; to: PileRef };

const TARGET =
  '[from {pile:pile}] [(to|onto) {to:newpile}] [, the {above=top|bottom} card of each pair above]';

/** P34: some pairs of top and bottom card drawn off to another pile. */
export const milkPairs = defineMove<MilkPairsArgs>({
  id: 'milk-pairs',
  procedures: ['P34'],
  hands: 'deal',
  title: 'milk off pairs',
  phrases: [
    phrase(`(milk|milk off) (a|1|one) pair ${TARGET}`, { pairs: { of: 'exactly', n: 1 } }),
    phrase(`(milk|milk off) {pairs:many} pairs ${TARGET}`),
    phrase(`(draw|take|milk) off the top and (the bottom|bottom) card together ${TARGET}`, {
      pairs: { of: 'exactly', n: 1 },
    }),
  ],
  defaults: { pile: 'packet', above: 'top', to: 'table' },
  help: 'Top and bottom card are drawn off together, so many times, each pair laid on the one before. The rest stays.',
  caution: 'Only whole pairs are drawn: a single last card stays where it is.',
  synonyms: ['draw off pairs'],
  brings: ({ to }) => ({ piles: named(to) }),
  check: ({ pile, to }) => (same(pile, to) ? [trouble('pile-twice')] : []),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const to = pileName(args.to, view);
    const size = pileSize(args.pile, view);
    if (pile === to) return stuck('pile-twice', { piles: [pile] });
    const counts = allowed(args.pairs, 0, Math.floor(size / 2), view);
    if (counts.length === 0) return stuck('not-enough-cards', { pile, size });
    return decided(
      counts.map((k) => ({ key: k, actions: milked(pile, size, k, args.above, to), next: null })),
    );
  },
  say: ({ pairs }, [k]) =>
    !isOpen(pairs) ? '' : k === 0 ? 'milks nothing' : `milks off ${k === 1 ? '1 pair' : `${k} pairs`}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Milk 2 pairs to the table.',
      choices: [],
      after: 'packet: 3 4 5 6; table: 2 7 1 8',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Milk any number of pairs from the packet to the table.',
      choices: [1],
      after: 'packet: 2 3 4; table: 1 5',
    },
  ],
});
