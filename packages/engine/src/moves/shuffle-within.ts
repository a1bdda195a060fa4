import { trouble } from '../base/diagnostic.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { decided, within, type Way } from './handling.ts';
import { defineMove, numberOf, pileName, pileSize, START, stuck, type Scattered } from './move.ts';

type WithinArgs = { pile: PileRef; k: NumberRef };

/** P59: the cards of each pair, or of each block of k from the top, mixed among themselves. */
export const shuffleWithin = defineMove<WithinArgs>({
  id: 'shuffle-within',
  procedures: ['P59'],
  hands: 'mix',
  title: 'shuffle within blocks',
  phrases: [
    phrase('(shuffle|mix) (within|the cards of|) each pair [(in|of) {pile:pile}]', { k: 2 }),
    phrase('(shuffle|mix) (within|the cards of|) each block of {k:number} [cards] [(in|of) {pile:pile}]'),
  ],
  defaults: { pile: 'packet' },
  help: 'Counted from the top, each pair or block keeps its place and its cards, and these come in any order.',
  caution: 'What is left over at the bottom is a smaller block of its own.',
  synonyms: ['mix inside the pairs'],
  check: ({ k }) => (k === 0 ? [trouble('blocks-of-none')] : []),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const k = numberOf(args.k, view);
    if (k === 0) return stuck('blocks-of-none');
    const ways: Way[] = [{ key: 'stop', actions: [], next: null }];
    for (let p = 0; p + 1 < pileSize(args.pile, view); p++)
      if ((p + 1) % k !== 0)
        ways.push({ key: `swap ${p + 1}`, actions: [carry(pile, p, 1, pile, p + 1)], next: 'mixing' });
    return view.phase === START ? decided(ways) : within(ways);
  },
  scatters(args, view) {
    const k = numberOf(args.k, view);
    const size = pileSize(args.pile, view);
    const blocks: Scattered[] = [];
    for (let at = 0; at < size; at += k)
      blocks.push({ pile: pileName(args.pile, view), at, count: Math.min(k, size - at) });
    return blocks;
  },
  say: (_args, keys) => saidSwaps(keys.slice(0, -1).map(String), 'cards'),
  examples: [
    {
      before: '1 2 3 4 5 6',
      sentence: 'Shuffle within each pair.',
      choices: ['swap 3', 'stop'],
      after: '1 2 4 3 5 6',
    },
    {
      before: '1 2 3 4 5 6 7',
      sentence: 'Shuffle within each block of 3 cards.',
      choices: ['swap 1', 'swap 2', 'swap 5', 'stop'],
      after: '2 3 1 4 6 5 7',
    },
  ],
});

export function saidSwaps(keys: readonly string[], noun: string): string {
  const at = keys.map((key) => Number(key.slice('swap '.length)));
  if (at.length === 0) return `leaves the ${noun} as they are`;
  return `exchanges ${noun} ${at.map((n) => `${n} and ${n + 1}`).join(', then ')}`;
}
