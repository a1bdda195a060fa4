import { trouble } from '../base/diagnostic.ts';
import type { Amount, NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, mark, type Action } from '../pictures/actions.ts';
import type { Face } from './deal.ts';
import { decided, greatest, PILE, stemOf, type Plural, type Way } from './handling.ts';
import { allowed, defineMove, numberOf, pileName, pileSize, stuck, type View } from './move.ts';

type DealPilesArgs = {
  pile: PileRef;
  into: Amount;
  plural: Plural;
  /** How many cards are dealt in all; every card if absent. */
  count?: Amount;
  /** How many cards each pile gets; as far as they go if absent. */
  each?: NumberRef;
  face?: Face;
};

/** More piles than a table holds; a named number may ask for any of them. */
const MOST_PILES = 104;

const DEAL = '(deal|deal out|distribute)';

/** P29, P44, and P78 when hands are gathered and dealt again: cards dealt in turn to so many piles, round and round, starting with the first. */
export const dealPiles = defineMove<DealPilesArgs>({
  id: 'deal-piles',
  procedures: ['P29', 'P44', 'P78'],
  hands: 'deal',
  title: 'deal into piles',
  phrases: [
    phrase(
      `${DEAL} ${PILE} [alternately|in turn] into {into:many} {plural=piles|heaps|hands} [in turn] [{face=face up|face down}]`,
    ),
    phrase(
      `${DEAL} {count:cards} [from {pile:pile}] into {into:many} {plural=piles|heaps|hands} [in turn] [{face=face up|face down}]`,
    ),
    phrase(
      `${DEAL} {into:many} {plural=hands|piles|heaps} of {each:number} [cards] [each] [from {pile:pile}] [{face=face up|face down}]`,
    ),
    phrase(`${DEAL} {into:many} {plural=hands|piles|heaps} [from {pile:pile}] [{face=face up|face down}]`),
    phrase(`${DEAL} into {into:many} {plural=piles|heaps|hands} [in turn] [{face=face up|face down}]`),
    phrase(`${DEAL} ${PILE} {face=face up|face down} into {into:many} {plural=piles|heaps|hands} [in turn]`),
  ],
  defaults: { pile: 'packet' },
  help: 'One card to each pile in turn, then round again. The first card of all is at the bottom of pile 1.',
  caution:
    'Every pile comes out reversed. When the cards do not go round evenly, the first piles get one more.',
  synonyms: ['deal out', 'deal hands', 'distribute'],
  brings({ into, plural }) {
    const most = Math.min(greatest(into) ?? MOST_PILES, MOST_PILES);
    return { piles: Array.from({ length: most }, (_, i) => `${stemOf(plural)} ${i + 1}`) };
  },
  check({ into, each }) {
    const most = greatest(into);
    if (most === 0 || each === 0) return [trouble('no-piles')];
    return most !== undefined && most > MOST_PILES ? [trouble('too-many-piles', { most: MOST_PILES })] : [];
  },
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const stem = stemOf(args.plural);
    const open = args.into.of !== 'exactly' && args.into.of !== 'range';
    const piles = allowed(args.into, 1, open ? Math.max(size, 1) : MOST_PILES, view);
    if (piles.length === 0) return stuck('no-piles', { pile, size });
    const counts = args.count === undefined ? [size] : allowed(args.count, 0, size, view);
    const ways = piles.flatMap((k) =>
      (args.each === undefined ? counts : [k * numberOf(args.each, view)])
        .filter((count) => count <= size)
        .map((count): Way => {
          const key =
            counts.length === 1 || args.each !== undefined
              ? k
              : piles.length === 1
                ? count
                : `${count} into ${k}`;
          return { key, actions: inTurn(pile, count, k, stem, args.face, view), next: null };
        }),
    );
    return ways.length === 0 ? stuck('not-enough-cards', { pile, size }) : decided(ways);
  },
  say: ({ into, count }, [key]) => {
    if (typeof key === 'string') return `deals ${key}`;
    if (into.of === 'exactly') return count === undefined || count.of === 'exactly' ? '' : `deals ${key}`;
    return key === 1 ? 'deals 1 pile' : `deals ${key} piles`;
  },
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal the packet into 3 piles.',
      choices: [],
      after: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
    },
    {
      before: '1 2 3 4 5 6 7 8; n = 2',
      sentence: 'Deal 3 hands of N cards.',
      choices: [],
      after: 'packet: 7 8; hand 1: 4 1; hand 2: 5 2; hand 3: 6 3',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Deal the packet into 2 to 3 heaps.',
      choices: [2],
      after: 'heap 1: 5 3 1; heap 2: 6 4 2',
    },
  ],
});

function inTurn(
  pile: string,
  count: number,
  k: number,
  stem: string,
  face: Face | undefined,
  view: View,
): Action[] {
  const actions: Action[] = [];
  let source = pile;
  // A pile that is dealt out into piles of its own kind is taken up first.
  if (pile.startsWith(`${stem} `)) {
    const size = pileSize(pile, view);
    if (size > 0) actions.push(carry(pile, 0, size, '~dealt', 0));
    source = '~dealt';
  }
  for (let p = 0; p < count; p++) {
    const to = `${stem} ${(p % k) + 1}`;
    actions.push(carry(source, 0, 1, to, 0));
    if (face !== undefined) actions.push(mark(to, 0, 1, 'up', face === 'face up' ? 'set' : 'clear'));
  }
  // What was not dealt out stays where the pile was, beneath what may have been dealt there.
  const rest = pileSize(pile, view) - count;
  if (source !== pile && rest > 0) {
    const index = Number(pile.slice(stem.length + 1)) - 1;
    const landed = index >= 0 && index < k ? Math.ceil((count - index) / k) : 0;
    actions.push(carry(source, 0, rest, pile, Math.max(landed, 0)));
  }
  return actions;
}
