import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { called, cardCount, decided, named, pushOff } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';
import { isOpen, noNumber, numbersOf } from './open.ts';

type CutOffArgs = { pile: PileRef; count: Amount; to: PileRef; call?: string };

/** P3, P11: a packet is lifted off the top and laid elsewhere; nothing is completed. */
export const cutOff = defineMove<CutOffArgs>({
  id: 'cut-off',
  procedures: ['P3', 'P11'],
  hands: 'cut',
  title: 'cut off a packet',
  phrases: [
    phrase(
      'cut off {count:cards} [from {pile:pile}] [(to|onto|into) {to:newpile}][, call (it|the number) {call:newname}]',
    ),
    phrase(
      'cut off {count:cards} [from {pile:pile}] and (keep|hide|put) them in {to:newpile}[, call (it|the number) {call:newname}]',
    ),
    phrase('cut {pile:pile} [at {count:amount}] and put the (top part|upper part) on {to:newpile}'),
    phrase('pocket {count:topcards} [of {pile:pile}]', { to: 'pocket' }),
    phrase('(put|place|lay) {count:topcards} [of {pile:pile}] (on|onto|in|into) {to:newpile}'),
    phrase('(cut|lift) off a packet [from {pile:pile}] [(to|onto) {to:newpile}]', { count: { of: 'any' } }),
  ],
  defaults: { pile: 'packet', count: { of: 'any' }, to: 'table' },
  help: 'A packet is lifted off the top and laid on another pile, its order kept. The cards beneath stay where they are.',
  caution:
    'The cut is not completed. An open number leaves at least one card in each part; a stated number may be all.',
  synonyms: ['tabled cut', 'cut a secret number and keep it', 'pocket'],
  brings: ({ to, call }) => ({ piles: named(to), numbers: call === undefined ? [] : [call] }),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const numbers = numbersOf(args.count, args.pile, view);
    const stated =
      args.count.of === 'exactly' || (args.count.of === 'range' && args.count.about === undefined);
    const left = stated ? numbers : numbers.filter((n) => n > 0 && n < size);
    if (left.length === 0) return noNumber(args.count, args.pile, view);
    const to = pileName(args.to, view);
    return decided(
      left.map((n) => ({ key: n, actions: pushOff(pile, n, to), next: null, ...called(args.call, n) })),
    );
  },
  say: ({ count }, [n]) => (isOpen(count) ? `cuts off ${cardCount(Number(n))}` : ''),
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Cut off 3 cards to the table.',
      choices: [],
      after: 'packet: 4 5 6 7 8; table: 1 2 3',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Cut off some cards to the pocket, call it N.',
      choices: [2],
      after: 'n = 2; packet: 3 4 5; pocket: 1 2',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Cut off half of the cards to the left.',
      choices: [],
      after: 'left: 1 2 3; packet: 4 5 6',
    },
    {
      before: 'n = 2; 1 2 3',
      sentence: 'Put the top N cards on pile 1.',
      choices: [],
      after: 'packet: 3; pile 1: 1 2',
    },
  ],
});
