import { trouble } from '../base/diagnostic.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type ExchangePilesArgs = { one: PileRef; other: PileRef };

/** P71: two piles change places, or two people exchange their packets. */
export const exchangePiles = defineMove<ExchangePilesArgs>({
  id: 'exchange-piles',
  procedures: ['P71'],
  hands: 'hand over',
  title: 'exchange two piles',
  phrases: [phrase('(exchange|swap) {one:pile} (and|with|for) {other:pile}')],
  defaults: {},
  help: 'Two piles change places as they are.',
  caution: 'The names stay with the places, not with the cards.',
  synonyms: ['swap'],
  check: ({ one, other }) => (same(one, other) ? [trouble('pile-twice')] : []),
  options(args, view) {
    const one = pileName(args.one, view);
    const other = pileName(args.other, view);
    if (one === other) return stuck('pile-twice', { piles: [one] });
    const sizes = [pileSize(args.one, view), pileSize(args.other, view)];
    const actions = [
      carry(one, 0, sizes[0], '~aside', 0),
      carry(other, 0, sizes[1], one, 0),
      carry('~aside', 0, sizes[0], other, 0),
    ];
    return [{ key: 'exchanged', actions: actions.filter(({ count }) => count > 0), next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'pile 1: 1 2^; pile 2: 3',
      sentence: 'Exchange pile 1 and pile 2.',
      choices: [],
      after: 'pile 1: 3; pile 2: 1 2^',
    },
  ],
});
