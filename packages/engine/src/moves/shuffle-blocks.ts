import { trouble } from '../base/diagnostic.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { decided, within, type Way } from './handling.ts';
import { defineMove, numberOf, pileName, pileSize, START, stuck } from './move.ts';
import { saidSwaps } from './shuffle-within.ts';

type BlocksArgs = { pile: PileRef; k: NumberRef };

/** P59: pairs or blocks of k moved as units into any order, each unchanged inside. */
export const shuffleBlocks = defineMove<BlocksArgs>({
  id: 'shuffle-blocks',
  procedures: ['P59'],
  hands: 'mix',
  title: 'shuffle the order of blocks',
  phrases: [
    phrase('(shuffle|mix|change) the order of the pairs [(in|of) {pile:pile}]', { k: 2 }),
    phrase('(shuffle|mix|change) the order of the blocks of {k:number} [cards] [(in|of) {pile:pile}]'),
    phrase('(put|bring|mix|shuffle) the pairs [of {pile:pile}] (in|into) any order', { k: 2 }),
    phrase('(put|bring|mix|shuffle) the blocks of {k:number} [cards] [of {pile:pile}] (in|into) any order'),
  ],
  defaults: { pile: 'packet' },
  help: 'Counted from the top, the pairs or blocks come in any order; each keeps the order of its own cards.',
  caution: 'Cards left over at the bottom stay there.',
  synonyms: ['pairs in any order'],
  check: ({ k }) => (k === 0 ? [trouble('blocks-of-none')] : []),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const k = numberOf(args.k, view);
    if (k === 0) return stuck('blocks-of-none');
    const blocks = Math.floor(pileSize(args.pile, view) / k);
    const ways: Way[] = [{ key: 'stop', actions: [], next: null }];
    for (let b = 0; b + 1 < blocks; b++)
      ways.push({
        key: `swap ${b + 1}`,
        actions: [carry(pile, b * k, k, pile, (b + 1) * k)],
        next: 'mixing',
      });
    return view.phase === START ? decided(ways) : within(ways);
  },
  scatters(args, view) {
    const unit = numberOf(args.k, view);
    const count = Math.floor(pileSize(args.pile, view) / unit) * unit;
    return [{ pile: pileName(args.pile, view), at: 0, count, unit }];
  },
  say: ({ k }, keys) => saidSwaps(keys.slice(0, -1).map(String), k === 2 ? 'pairs' : 'blocks'),
  examples: [
    {
      before: '1 2 3 4 5 6 7',
      sentence: 'Shuffle the order of the pairs.',
      choices: ['swap 1', 'swap 2', 'stop'],
      after: '3 4 5 6 1 2 7',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Put the blocks of 3 cards in any order.',
      choices: ['swap 1', 'stop'],
      after: '4 5 6 1 2 3',
    },
  ],
});
