import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { decided, layOn, named, numberedPiles, stemOf, within, type Plural } from './handling.ts';
import { defineMove, pileName, START, stuck } from './move.ts';

type OutermostArgs = { plural: Plural; to: PileRef };

/** P30: the pile at either end of the row onto its neighbour, again and again, until one is left. */
export const gatherOutermost = defineMove<OutermostArgs>({
  id: 'gather-outermost',
  procedures: ['P30'],
  hands: 'gather',
  title: 'gather from the ends',
  phrases: [
    phrase(
      '(gather|collect|assemble) the {plural=piles|heaps|hands}(, each time an|, always an|,|, the) outermost [one] ' +
        '(onto|on) (its|the) neighbour [into {to:newpile}]',
    ),
  ],
  defaults: { to: 'packet' },
  help: 'The pile at the left or at the right end of the row is laid on its neighbour, end after end, until one pile is left.',
  caution: 'Either end may be taken each time. The pile that is reached last lies lowest.',
  synonyms: ['outermost onto its neighbour'],
  brings: ({ to }) => ({ piles: named(to) }),
  options(args, view) {
    const piles = numberedPiles(stemOf(args.plural), view.layout);
    const to = pileName(args.to, view);
    if (piles.length === 0) return stuck('no-piles', { stem: stemOf(args.plural) });
    const [first] = piles;
    if (piles.length === 1)
      return [{ key: 'gather', actions: layOn(first.name, first.size, to), next: null, off: 0 }];
    const last = piles[piles.length - 1];
    const ways = (
      [
        ['left', first, piles[1]],
        ['right', last, piles[piles.length - 2]],
      ] as const
    ).map(([key, outer, inner]) => ({
      key,
      actions: [
        ...layOn(outer.name, outer.size, inner.name),
        ...(piles.length === 2 ? layOn(inner.name, outer.size + inner.size, to) : []),
      ],
      next: piles.length === 2 ? null : 'gathering',
    }));
    return view.phase === START ? decided(ways) : within(ways);
  },
  say: (_args, keys) => (keys[0] === 'gather' ? '' : `gathers from the ${keys.join(', ')}`),
  examples: [
    {
      before: 'pile 1: 1 2; pile 2: 3 4; pile 3: 5 6',
      sentence: 'Gather the piles, each time an outermost onto its neighbour.',
      choices: ['left', 'right'],
      after: '5 6 1 2 3 4',
    },
  ],
});
