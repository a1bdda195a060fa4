import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { woven, type FaroWay } from './faro.ts';
import { cardCount, decided } from './handling.ts';
import { allowed, defineMove, pileName, pileSize, stuck } from './move.ts';
import { isOpen } from './open.ts';

type PartialFaroArgs = { pile: PileRef; count: Amount; way: FaroWay };

/** P54: some cards from the top woven singly into the top of the rest. */
export const partialFaro = defineMove<PartialFaroArgs>({
  id: 'partial-faro',
  procedures: ['P54'],
  hands: 'mix',
  title: 'partial faro',
  phrases: [
    phrase('{way=in-faro|out-faro} {count:topcards} [of {pile:pile}] into the rest'),
    phrase('weave {count:topcards} [of {pile:pile}] into the rest, {way=in-faro~in|out-faro~out}'),
    phrase('(partial|incomplete) {way=in-faro|out-faro} of {count:topcards} [of {pile:pile}]'),
  ],
  defaults: { pile: 'packet' },
  help:
    'The cards taken from the top are woven one by one into the top of the rest. In: they come 2nd, 4th, 6th, and so on. ' +
    'Out: the top card stays, they come 1st, 3rd, 5th.',
  caution: 'At most half of the packet can be woven in.',
  synonyms: ['incomplete faro'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const counts = allowed(args.count, 0, size, view).filter((k) => 2 * k <= size);
    if (counts.length === 0) return stuck('too-many-to-weave', { pile, size });
    return decided(counts.map((k) => ({ key: k, actions: woven(pile, k, size, args.way), next: null })));
  },
  say: ({ count }, [k]) =>
    !isOpen(count) ? '' : k === 0 ? 'weaves nothing' : `weaves ${cardCount(Number(k))}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'In-faro the top 3 cards into the rest.',
      choices: [],
      after: '4 1 5 2 6 3 7 8',
    },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Weave any number of cards from the top into the rest, out.',
      choices: [3],
      after: '1 4 2 5 3 6 7 8',
    },
  ],
});
