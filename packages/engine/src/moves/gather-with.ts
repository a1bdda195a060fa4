import { phrase } from '../phrases/phrase.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { gathered } from './gather.ts';
import { decided, named, numberedPiles, stemOf, type NumberedPile, type Plural } from './handling.ts';
import { defineMove, numberOf, pileName, stuck } from './move.ts';

type GatherWithArgs = {
  plural: Plural;
  n: NumberRef;
  where: 'on top' | 'in the middle' | 'at the bottom';
  others: 'in order' | 'in any order';
  to: PileRef;
};

/** Orders of up to so many other piles are listed; more are never gathered by hand in this way. */
const MOST_OTHERS = 5;

/** P69, S16: piles gathered so that one named pile gets a stated place among them. */
export const gatherWith = defineMove<GatherWithArgs>({
  id: 'gather-with',
  procedures: ['P69'],
  hands: 'gather',
  title: 'gather with one pile placed',
  phrases: (['pile', 'heap', 'hand'] as const).map((stem) =>
    phrase(
      `(gather|collect|assemble|pick up) the ${stem}s with ${stem} {n:number} {where=on top|in the middle|at the bottom} ` +
        '[, the others {others=in order|in any order}] [into {to:newpile}]',
      { plural: `${stem}s` },
    ),
  ),
  defaults: { others: 'in order', to: 'packet' },
  help: 'All piles are put together so that the one named lies on top, in the middle or at the bottom, each keeping its order.',
  caution:
    'In the middle asks for an odd number of piles. The others lie in order of their numbers unless they may lie anyhow.',
  synonyms: ['pile location'],
  brings: ({ to }) => ({ piles: named(to) }),
  options(args, view) {
    const stem = stemOf(args.plural);
    const piles = numberedPiles(stem, view.layout);
    const n = numberOf(args.n, view);
    const it = piles.find((pile) => pile.n === n);
    if (it === undefined) return stuck('no-such-pile', { pile: `${stem} ${n}` });
    const others = piles.filter((pile) => pile !== it);
    if (args.where === 'in the middle' && others.length % 2 === 1)
      return stuck('no-middle-pile', { stem, piles: piles.length });
    if (args.others === 'in any order' && others.length > MOST_OTHERS)
      return stuck('too-many-piles', { most: MOST_OTHERS + 1 });
    const above =
      args.where === 'on top' ? 0 : args.where === 'at the bottom' ? others.length : others.length / 2;
    const to = pileName(args.to, view);
    return decided(
      (args.others === 'in order' ? [others] : orders(others)).map((row) => {
        const all = [...row.slice(0, above), it, ...row.slice(above)];
        return { key: all.map((pile) => pile.n).join(' '), actions: gathered(all, to), next: null };
      }),
    );
  },
  say: ({ others }, [order]) => (others === 'in any order' ? `gathers ${order} from the top` : ''),
  examples: [
    {
      before: 'n = 1; pile 1: 1 2; pile 2: 3 4; pile 3: 5 6',
      sentence: 'Gather the piles with pile N in the middle.',
      choices: [],
      after: '3 4 1 2 5 6',
    },
    {
      before: 'pile 1: 1; pile 2: 2; pile 3: 3',
      sentence: 'Pick up the piles with pile 2 on top, the others in any order.',
      choices: ['2 3 1'],
      after: '2 3 1',
    },
  ],
});

function orders(piles: readonly NumberedPile[]): NumberedPile[][] {
  if (piles.length === 0) return [[]];
  return piles.flatMap((pile) =>
    orders(piles.filter((other) => other !== pile)).map((rest) => [pile, ...rest]),
  );
}
