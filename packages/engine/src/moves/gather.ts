import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import {
  decided,
  layOn,
  named,
  numberedPiles,
  stemOf,
  within,
  type NumberedPile,
  type Plural,
} from './handling.ts';
import { defineMove, pileName, START, stuck, type Key } from './move.ts';

type GatherArgs = { plural: Plural; way: Way; to: PileRef };
type Way = 'left on right' | 'right on left' | 'in cyclic order' | 'in any order';

/** Each pile of the list laid on the next, and all of them on `to`: the first ends uppermost. */
export function gathered(piles: readonly NumberedPile[], to: string): Action[] {
  const actions: Action[] = [];
  let size = 0;
  piles.forEach((pile, i) => {
    if (i > 0) actions.push(...layOn(piles[i - 1].name, size, pile.name));
    size += pile.size;
  });
  return [...actions, ...layOn(piles[piles.length - 1].name, size, to)];
}

const PRINTED =
  '{way=left on right~each onto the next~each on the next|right on left|in cyclic order|in any order}';
const NOUN = '{plural=piles|heaps|hands}';
const VERB = '(gather|collect|assemble|pick up|stack|stack up)';

/** P30: piles gathered into one, the row counted from the left. */
export const gather = defineMove<GatherArgs>({
  id: 'gather',
  procedures: ['P30'],
  hands: 'gather',
  title: 'gather piles',
  phrases: [
    phrase(`${VERB} [all] the ${NOUN} ${PRINTED} [into {to:newpile}]`),
    phrase(`(pick|stack) [all] the ${NOUN} up ${PRINTED} [into {to:newpile}]`),
    phrase(`${VERB} [all] the ${NOUN} [into {to:newpile}]`, { way: 'in any order' }),
  ],
  defaults: { to: 'packet' },
  help:
    'All the piles are put together. Left on right: pile 1 goes on pile 2, both on pile 3, and so on. ' +
    'Choices name the piles from the uppermost down.',
  caution:
    'Left on right leaves pile 1 uppermost, right on left the last. Any order destroys most arrangements. What lies in the packet stays beneath.',
  synonyms: ['collect', 'assemble', 'pick up', 'each onto the next'],
  brings: ({ to }) => ({ piles: named(to) }),
  readings: ({ plural, way }) => {
    const one = stemOf(plural);
    switch (way) {
      case 'left on right':
        return [{ word: way, taken: `${one} 1 ends uppermost`, other: `Gather the ${plural} right on left` }];
      case 'right on left':
        return [
          { word: way, taken: `the last ${one} ends uppermost`, other: `Gather the ${plural} left on right` },
        ];
      case 'in cyclic order':
        return [
          {
            word: way,
            taken: `any ${one} uppermost, the others follow round the ring`,
            other: `Gather the ${plural} in any order`,
          },
        ];
      case 'in any order':
        return [
          { word: 'gather', taken: 'in any order at all', other: `Gather the ${plural} left on right` },
        ];
    }
  },
  open: true,
  options(args, view) {
    const piles = numberedPiles(stemOf(args.plural), view.layout);
    const to = pileName(args.to, view);
    if (args.way === 'in any order')
      return anyOrder(piles, to, sizeOf(view.layout, '~gathered'), view.phase === START, args);
    if (piles.length === 0) return stuck('no-piles', { stem: stemOf(args.plural) });
    const rows =
      args.way === 'left on right'
        ? [piles]
        : args.way === 'right on left'
          ? [[...piles].reverse()]
          : piles.map((_, i) => [...piles.slice(i), ...piles.slice(0, i)]);
    return decided(rows.map((row) => ({ key: row[0].n, actions: gathered(row, to), next: null })));
  },
  say: ({ plural, way }, keys) => {
    if (way === 'in any order') return keys.length === 0 ? '' : `gathers ${saidOrder(plural, keys)}`;
    return way === 'in cyclic order' ? `gathers with ${stemOf(plural)} ${keys[0]} uppermost` : '';
  },
  examples: [
    {
      before: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
      sentence: 'Gather the piles left on right.',
      choices: [],
      after: '7 4 1 8 5 2 6 3',
    },
    {
      before: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
      sentence: 'Gather the piles right on left.',
      choices: [],
      after: '6 3 8 5 2 7 4 1',
    },
    {
      before: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
      sentence: 'Gather the piles in any order.',
      choices: [2, 1],
      after: '8 5 2 7 4 1 6 3',
    },
    {
      before: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
      sentence: 'Gather the piles in cyclic order.',
      choices: [2],
      after: '8 5 2 6 3 7 4 1',
    },
  ],
});

/** One pile at a time beneath those gathered; the last goes by itself. Which piles are left tells all that matters. */
function anyOrder(
  piles: readonly NumberedPile[],
  to: string,
  held: number,
  begins: boolean,
  { plural }: GatherArgs,
): ReturnType<typeof decided> | ReturnType<typeof stuck> {
  if (piles.length === 0) return stuck('no-piles', { stem: stemOf(plural) });
  const ways = piles.map(({ name, n, size }) => {
    const next = piles.length > 2 ? 'gathering' : null;
    const actions: Action[] = [carry(name, 0, size, '~gathered', held)];
    let all = held + size;
    if (next === null) {
      for (const last of piles)
        if (last.n !== n) {
          actions.push(carry(last.name, 0, last.size, '~gathered', all));
          all += last.size;
        }
      actions.push(carry('~gathered', 0, all, to, 0));
    }
    return { key: n, actions, next };
  });
  return begins ? decided(ways) : within(ways);
}

function saidOrder(plural: Plural, keys: readonly Key[]): string {
  return `${stemOf(plural)} ${keys.join(' on ')}${keys.length === 1 ? ' on the other' : ' on the last'}`;
}
