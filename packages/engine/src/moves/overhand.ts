import { trouble } from '../base/diagnostic.ts';
import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { decided, greatest, PILE, within } from './handling.ts';
import { allowed, defineMove, pileName, START } from './move.ts';

type OverhandArgs = { pile: PileRef; size: Amount };

const VERB = '(overhand-shuffle|overhand|hindu-shuffle|hindu shuffle)';

/** P57: packets of any size chopped off the top into the other hand, one upon the other. */
export const overhand = defineMove<OverhandArgs>({
  id: 'overhand',
  procedures: ['P57'],
  hands: 'mix',
  title: 'overhand shuffle',
  phrases: [
    phrase(`${VERB} ${PILE} [in blocks of {size:cards}]`),
    phrase(`${VERB} ${PILE} in even blocks`, { size: { of: 'multiple', k: 2, plus: 0 } }),
    phrase(`${VERB} ${PILE} in pairs`, { size: { of: 'exactly', n: 2 } }),
    phrase(`give ${PILE} an overhand [shuffle] [in blocks of {size:cards}]`),
    phrase(`(chop|shuffle) ${PILE} overhand [in blocks of {size:cards}]`),
  ],
  defaults: { pile: 'packet', size: { of: 'any' } },
  help:
    'Blocks are taken from the top into the other hand, each on the one before. The order of the blocks is reversed, each block stays as it was. ' +
    'Choices: the size of each block, from the top.',
  caution: 'When what is left is too small for a block of the stated size, it goes as it is.',
  synonyms: ['chop', 'Hindu shuffle'],
  check: ({ size }) => (greatest(size) === 0 ? [trouble('blocks-of-none')] : []),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const rest = sizeOf(view.layout, pile);
    const done = sizeOf(view.layout, '~shuffled');
    const sizes = args.size.of === 'half' ? [Math.floor(rest / 2)] : allowed(args.size, 1, rest, view);
    const blocks = sizes.filter((k) => k > 0);
    if (blocks.length === 0) blocks.push(rest);
    const ways = blocks.reverse().map((k) => {
      if (k < rest) return { key: k, actions: [carry(pile, 0, k, '~shuffled', 0)], next: 'chopping' };
      const last =
        done === 0 ? [] : [carry(pile, 0, k, '~shuffled', 0), carry('~shuffled', 0, done + k, pile, 0)];
      return { key: k, actions: last, next: null };
    });
    return view.phase === START ? decided(ways) : within(ways);
  },
  say: (_args, keys) => (keys.length === 1 ? 'takes all at once' : `chops off ${keys.join(', ')}`),
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Overhand-shuffle the packet.',
      choices: [2, 1, 3, 2],
      after: '7 8 4 5 6 3 1 2',
    },
    {
      before: '1 2 3 4 5 6 7',
      sentence: 'Overhand-shuffle the packet in even blocks.',
      choices: [2, 4],
      after: '7 3 4 5 6 1 2',
    },
  ],
});
