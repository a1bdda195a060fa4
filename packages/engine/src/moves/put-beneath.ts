import { trouble } from '../base/diagnostic.ts';
import type { PileRef } from '../phrases/values.ts';
import { phrase, same } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type PutBeneathArgs = { pile: PileRef; under: PileRef };

/** P30: one pile beneath another. */
export const putBeneath = defineMove<PutBeneathArgs>({
  id: 'put-beneath',
  procedures: ['P30'],
  hands: 'gather',
  title: 'put a pile beneath another',
  phrases: [
    phrase(
      '(put|place|drop|lay|replace|return) {pile:pile} (beneath|under|underneath|below|at the bottom of|on the bottom of) {under:pile}',
    ),
    phrase('(put|place|drop|return) {pile:pile} [back] (beneath|underneath|at the bottom|on the bottom)', {
      under: 'packet',
    }),
  ],
  defaults: {},
  help: 'A pile goes as it is beneath another, which keeps its name.',
  caution: 'A counted pile put beneath the rest is the same as the rest dropped on top of it.',
  synonyms: ['put under', 'place below'],
  check: ({ pile, under }) => (same(pile, under) ? [trouble('pile-twice')] : []),
  options({ pile, under }, view) {
    const names = [pileName(pile, view), pileName(under, view)];
    if (names[0] === names[1]) return stuck('pile-twice', { piles: names });
    const size = pileSize(pile, view);
    const actions = size === 0 ? [] : [carry(names[0], 0, size, names[1], pileSize(under, view))];
    return [{ key: 'put', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'packet: 4 5; table: 3 2 1',
      sentence: 'Put the table beneath the packet.',
      choices: [],
      after: '4 5 3 2 1',
    },
  ],
});
