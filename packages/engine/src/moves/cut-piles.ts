import { trouble } from '../base/diagnostic.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { cardCount, decided, stemOf, within, type Plural, type Way } from './handling.ts';
import { sizeOf } from '../pictures/layout.ts';
import { defineMove, numberOf, pileName, START, stuck } from './move.ts';

type CutPilesArgs = { pile: PileRef; into: NumberRef; equal: boolean; plural: Plural };

const MOST_PILES = 26;
const REST = '~rest';

/** P3, P4: a packet is cut into several piles that stay on the table; pile 1 gets the old top card. */
export const cutPiles = defineMove<CutPilesArgs>({
  id: 'cut-piles',
  procedures: ['P3', 'P4'],
  hands: 'cut',
  title: 'cut into piles',
  phrases: [
    phrase('(cut|split|divide) {pile:pile} into {into:number} {plural=piles|heaps|hands~packets}'),
    phrase('(cut|split|divide) {pile:pile} into {into:number} equal {plural=piles|heaps|hands~packets}', {
      equal: true,
    }),
  ],
  defaults: { pile: 'packet', equal: false },
  help: 'The packet is cut into piles that stay apart: pile 1 is cut off the top, the last pile is what is left. Every pile has a card.',
  caution: 'Nothing is put together. Whoever lifts blocks from below lays the piles the other way round.',
  synonyms: ['cut into packets'],
  brings: ({ into, plural }) => ({
    piles: Array.from(
      { length: typeof into === 'number' ? Math.min(into, MOST_PILES) : MOST_PILES },
      (_, i) => `${stemOf(plural)} ${i + 1}`,
    ),
  }),
  check({ into }) {
    if (into === 0) return [trouble('no-piles')];
    return typeof into === 'number' && into > MOST_PILES
      ? [trouble('too-many-piles', { most: MOST_PILES })]
      : [];
  },
  options(args, view) {
    const piles = numberOf(args.into, view);
    const pile = pileName(args.pile, view);
    if (piles === 0 || piles > MOST_PILES) return stuck('no-piles', { pile });
    const name = (n: number) => `${stemOf(args.plural)} ${n}`;
    if (view.phase === START) {
      const size = sizeOf(view.layout, pile);
      if (size < piles) return stuck('not-enough-cards', { pile, size });
      if (args.equal && size % piles !== 0) return stuck('not-divisible', { pile, size, by: piles });
      // By way of a pile of its own, since the packet may itself be one of the piles to come.
      const lift = carry(pile, 0, size, REST, 0);
      const ways = cutsOf(1, size, piles, args.equal).map((way): Way => ({
        key: way.key,
        actions: [lift, ...way.cards.map(([n, count]) => carry(REST, 0, count, name(n), 0))],
        next: way.done ? null : 2,
      }));
      return decided(ways);
    }
    const next = Number(view.phase);
    const ways = cutsOf(next, sizeOf(view.layout, REST), piles, args.equal).map((way): Way => ({
      key: way.key,
      actions: way.cards.map(([n, count]): Action => carry(REST, 0, count, name(n), 0)),
      next: way.done ? null : next + 1,
    }));
    return within(ways);
  },
  say: ({ equal, into }, keys) => {
    if (equal || into === 1) return '';
    return `cuts off ${keys.map((n) => cardCount(Number(n))).join(', ')}`;
  },
  examples: [
    {
      before: '1 2 3 4 5 6',
      sentence: 'Cut the packet into 3 piles.',
      choices: [1, 3],
      after: 'pile 1: 1; pile 2: 2 3 4; pile 3: 5 6',
    },
    {
      before: '1 2 3 4',
      sentence: 'Cut the packet into 2 equal heaps.',
      choices: [],
      after: 'heap 1: 1 2; heap 2: 3 4',
    },
  ],
});

interface Cut {
  readonly key: number;
  /** Pile number and how many cards go there, in order. */
  readonly cards: readonly (readonly [number, number])[];
  readonly done: boolean;
}

/** Ways to cut off pile `next` from `size` cards; the last pile is what is left. */
function cutsOf(next: number, size: number, piles: number, equal: boolean): Cut[] {
  if (equal) {
    const each = size / piles;
    return [
      { key: each, cards: Array.from({ length: piles }, (_, i) => [i + 1, each] as const), done: true },
    ];
  }
  if (piles === 1) return [{ key: size, cards: [[1, size]], done: true }];
  const last = next === piles - 1;
  const cuts: Cut[] = [];
  for (let n = 1; n <= size - (piles - next); n++)
    cuts.push({
      key: n,
      cards: last
        ? [
            [next, n],
            [piles, size - n],
          ]
        : [[next, n]],
      done: last,
    });
  return cuts;
}
