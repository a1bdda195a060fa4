import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { called, cardCount } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { badName } from './name-number.ts';
import { chooseNumber, isOpen } from './open.ts';

type CountArgs = { pile: PileRef; count: Amount; how: 'on top' | 'beneath'; call?: string };

/** The top k of n one by one to the table, the rest on them: place p goes to n + 1 - p for p up to k, to p - k beyond. */
export function countedThenRest(pile: string, k: number, n: number, how: CountArgs['how']): Action[] {
  if (k === 0) return [];
  const counted = carry(pile, 0, k, '~counted', 0, { reversed: true });
  return how === 'beneath'
    ? [counted, carry('~counted', 0, k, pile, n - k)]
    : [counted, carry(pile, 0, n - k, '~counted', 0), carry('~counted', 0, n, pile, 0)];
}

const COUNT = '(count|deal) [out|off] {count:cards} [from {pile:pile}] ((to|onto) the table|) and';

/** P26: some cards counted to the table, then the rest dropped on them, or they are put beneath the rest. */
export const countAndTransfer = defineMove<CountArgs>({
  id: 'count-and-transfer',
  procedures: ['P26'],
  hands: 'deal',
  title: 'count and transfer',
  phrases: [
    phrase(
      `${COUNT} (drop|put|place|lay) the rest on [top of] (top|them)[, call (it|the number) {call:newname}]`,
      {
        how: 'on top',
      },
    ),
    phrase(
      `${COUNT} (put|place|drop|return) them (beneath|under|below|on the bottom of|at the bottom of) (the rest|the packet|)` +
        '[, call (it|the number) {call:newname}]',
      { how: 'beneath' },
    ),
    phrase(
      `${COUNT} (put|place|drop|return) them (on|at) the bottom[, call (it|the number) {call:newname}]`,
      {
        how: 'beneath',
      },
    ),
  ],
  defaults: { pile: 'packet', how: 'on top' },
  help:
    'Cards are counted to the table, which reverses them, and the rest goes on top of them. ' +
    'A counted card lands as far from the bottom as it was from the top, whatever the number.',
  caution:
    'With at least half the packet counted each time, three times bring the bottom card to the top, four restore.',
  synonyms: ['count out and put beneath'],
  brings: ({ call }) => ({ numbers: call === undefined ? [] : [call] }),
  check: ({ call }) => (call === undefined ? [] : badName(call)),
  readings: () => [
    {
      word: 'count',
      taken: 'one at a time, so that the counted cards are reversed',
      other: 'Cut the packet at ..., which moves them unreversed',
    },
  ],
  options(args, view) {
    return chooseNumber(args.count, args.pile, view, (k) => ({
      actions: countedThenRest(pileName(args.pile, view), k, pileSize(args.pile, view), args.how),
      next: null,
      ...called(args.call, k),
    }));
  },
  say: ({ count }, [k]) =>
    !isOpen(count) ? '' : k === 0 ? 'counts nothing' : `counts ${cardCount(Number(k))}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Count 3 cards to the table and drop the rest on top.',
      choices: [],
      after: '4 5 6 7 8 3 2 1',
    },
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Count any number of cards and put them beneath the rest.',
      choices: [3],
      after: '4 5 6 7 8 3 2 1',
    },
  ],
});
