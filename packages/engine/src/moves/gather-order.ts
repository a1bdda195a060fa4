import { trouble } from '../base/diagnostic.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { gathered } from './gather.ts';
import { named, numberedPiles, stemOf, type Plural } from './handling.ts';
import { defineMove, numberOf, pileName, stuck } from './move.ts';

type GatherOrderArgs = {
  plural: Plural;
  order: readonly NumberRef[];
  first: 'uppermost' | 'lowest';
  to: PileRef;
};

/** P30: piles gathered in an order the sentence gives. */
export const gatherOrder = defineMove<GatherOrderArgs>({
  id: 'gather-order',
  procedures: ['P30'],
  hands: 'gather',
  title: 'gather in a given order',
  phrases: [
    phrase(
      '(gather|collect|assemble|pick up|stack up) the {plural=piles|heaps|hands} in the order {order:order}' +
        '[, the first {first=uppermost~on top|lowest~at the bottom}] [into {to:newpile}]',
    ),
  ],
  defaults: { first: 'uppermost', to: 'packet' },
  help: 'The named piles are put together in the order given, the first of them uppermost. Piles that are not named stay.',
  caution:
    'Say which end the order starts from when a partner picks the piles up: the first one picked up often ends lowest.',
  synonyms: ['in the order'],
  brings: ({ to }) => ({ piles: named(to) }),
  check({ order }) {
    const numbers = order.filter((n) => typeof n === 'number');
    return new Set(numbers).size === numbers.length ? [] : [trouble('pile-twice')];
  },
  readings: ({ plural, order, first }) => [
    {
      word: 'order',
      taken:
        first === 'uppermost'
          ? 'the first named pile ends uppermost'
          : 'the first named pile ends at the bottom',
      other: `Gather the ${plural} in the order ${order.map((n) => (typeof n === 'number' ? n : n.var)).join(' ')}, the first ${
        first === 'uppermost' ? 'lowest' : 'uppermost'
      }`,
    },
  ],
  options(args, view) {
    const all = numberedPiles(stemOf(args.plural), view.layout);
    const numbers = args.order.map((ref) => numberOf(ref, view));
    if (new Set(numbers).size < numbers.length) return stuck('pile-twice', { order: numbers.map(String) });
    // A pile that got no cards cannot be picked up, and nobody misses it.
    const piles = numbers.flatMap((n) => all.filter((pile) => pile.n === n));
    if (piles.length === 0) return stuck('no-piles', { stem: stemOf(args.plural) });
    const row = args.first === 'uppermost' ? piles : [...piles].reverse();
    return [{ key: 'gather', actions: gathered(row, pileName(args.to, view)), next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
      sentence: 'Gather the piles in the order 2 1 3.',
      choices: [],
      after: '8 5 2 7 4 1 6 3',
    },
    {
      before: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
      sentence: 'Gather the piles in the order 2 1 3, the first lowest.',
      choices: [],
      after: '6 3 7 4 1 8 5 2',
    },
  ],
});
