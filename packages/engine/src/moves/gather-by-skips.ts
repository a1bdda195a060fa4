import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { gathered } from './gather.ts';
import { decided, named, numberedPiles, stemOf, type Plural } from './handling.ts';
import { defineMove, pileName, stuck } from './move.ts';

type SkipArgs = { plural: Plural; start?: PileRef; to: PileRef };

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/** P31: each pile on the pile r places to its right, r what is left over when the cards are divided by the piles. */
export const gatherBySkips = defineMove<SkipArgs>({
  id: 'gather-by-skips',
  procedures: ['P31'],
  hands: 'gather',
  title: 'skip gather',
  phrases: [
    phrase('gather the {plural=piles|heaps|hands} by skips [starting anywhere] [into {to:newpile}]'),
    phrase('gather the {plural=piles|heaps|hands} by skips starting with {start:pile} [into {to:newpile}]'),
    phrase('skip-gather the {plural=piles|heaps|hands} [starting with {start:pile}] [into {to:newpile}]'),
  ],
  defaults: { to: 'packet' },
  help:
    'Divide the number of cards by the number of piles; the remainder says how many places to the right, round the row, ' +
    'each pile goes before it is laid down. A cyclic stack stays one.',
  caution:
    'Gaps in the row still count as places. It works only when cards and piles have no common divisor.',
  synonyms: ['skip-gather'],
  brings: ({ to }) => ({ piles: named(to) }),
  options(args, view) {
    const stem = stemOf(args.plural);
    const piles = numberedPiles(stem, view.layout);
    const k = piles.length;
    if (k === 0) return stuck('no-piles', { stem });
    const cards = piles.reduce((sum, { size }) => sum + size, 0);
    if (gcd(cards, k) > 1) return stuck('skips-do-not-reach', { cards, piles: k });
    const to = pileName(args.to, view);
    const first = args.start === undefined ? undefined : pileName(args.start, view);
    const starts = piles.flatMap(({ name }, i) => (first === undefined || first === name ? [i] : []));
    if (starts.length === 0) return stuck('no-such-pile', { pile: first ?? stem });
    return decided(
      starts.map((start) => {
        const row = piles.map((_, j) => piles[(start + j * (cards % k)) % k]);
        return { key: piles[start].n, actions: gathered(row, to), next: null };
      }),
    );
  },
  say: ({ plural, start }, [n]) => (start === undefined ? `starts with ${stemOf(plural)} ${n}` : ''),
  examples: [
    {
      before: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
      sentence: 'Gather the piles by skips starting with pile 1.',
      choices: [],
      after: '7 4 1 6 3 8 5 2',
    },
    {
      before: 'pile 1: 7 4 1; pile 2: 8 5 2; pile 3: 6 3',
      sentence: 'Gather the piles by skips.',
      choices: [3],
      after: '6 3 8 5 2 7 4 1',
    },
  ],
});
