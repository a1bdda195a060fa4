import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { called, cardCount, decided, type Way } from './handling.ts';
import { allowed, defineMove, numberOf, pileName, pileSize, type View } from './move.ts';
import { isOpen, noNumber } from './open.ts';

export type Direction = 'from the top to the bottom' | 'from the bottom to the top';

type TransferArgs = {
  pile: PileRef;
  count: Amount;
  way: Direction;
  how: 'singly' | 'as a block';
  call?: string;
};

/** Cards moved from one end to the other, one at a time or together: in the end a cut either way. */
export function transferred(
  pile: string,
  size: number,
  count: number,
  way: Direction,
  singly: boolean,
): Action[] {
  const down = way === 'from the top to the bottom';
  if (size === 0 || count === 0) return [];
  if (!singly)
    return down ? [carry(pile, 0, count, pile, size - count)] : [carry(pile, size - count, count, pile, 0)];
  return Array.from({ length: count }, () =>
    down ? carry(pile, 0, 1, pile, size - 1) : carry(pile, size - 1, 1, pile, 0),
  );
}

/** Singly one can go on past the number of cards there are; only a stated number does. */
function numbers(args: TransferArgs, size: number, view: View): number[] {
  if (args.how === 'singly' && args.count.of === 'exactly' && size > 0) return [numberOf(args.count.n, view)];
  return allowed(args.count, 0, size, view);
}

// Longer than any count in a performance; keeps a hostile number from making a list without end.
const MOST_TRANSFERRED = 1000;

/** P9: cards go one by one from the top to the bottom: the same as a cut. */
export const transfer = defineMove<TransferArgs>({
  id: 'transfer',
  procedures: ['P9'],
  hands: 'cut',
  title: 'transfer from top to bottom',
  phrases: [
    phrase(
      '(transfer|shift) {count:cards} {way=from the top to the bottom|from the bottom to the top} [of {pile:pile}] ' +
        '[{how=singly~one by one~one at a time|as a block~together~as one}][, call (it|the number) {call:newname}]',
    ),
    phrase(
      '(transfer|shift) {count:cards} [{how=singly~one by one~one at a time|as a block~together~as one}] ' +
        '{way=from the top to the bottom|from the bottom to the top} [of {pile:pile}][, call (it|the number) {call:newname}]',
    ),
    phrase(
      'move {count:cards} [{how=singly~one by one~one at a time|as a block~together~as one}] ' +
        '{way=from the top to the bottom|from the bottom to the top} [of {pile:pile}][, call (it|the number) {call:newname}]',
    ),
    phrase(
      'move {count:cards} {way=from the top to the bottom|from the bottom to the top} [of {pile:pile}] ' +
        '{how=singly~one by one~one at a time|as a block~together~as one}',
    ),
    phrase('(move|put|place|transfer|shift) {count:severaltop} [of {pile:pile}] (to|on) the bottom', {
      way: 'from the top to the bottom',
      how: 'as a block',
    }),
    phrase('(move|put|place|transfer|shift) {count:severalbottom} [of {pile:pile}] (to|on) the top', {
      way: 'from the bottom to the top',
      how: 'as a block',
    }),
  ],
  defaults: { pile: 'packet', how: 'singly' },
  help: 'Cards go from the top to the bottom one at a time. The order goes round like a ring, as with a cut.',
  caution: 'Counting them to the table and laying that heap beneath would reverse them.',
  synonyms: ['shift', 'move from top to bottom'],
  brings: ({ call }) => ({ numbers: call === undefined ? [] : [call] }),
  check: ({ count }) =>
    count.of === 'exactly' && typeof count.n === 'number' && count.n > MOST_TRANSFERRED
      ? [{ code: 'number-too-large', facts: { number: count.n, most: MOST_TRANSFERRED } }]
      : [],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const list = numbers(args, size, view);
    if (list.length === 0) return noNumber(args.count, args.pile, view);
    return decided(
      list.map((n): Way => {
        const singly = args.how === 'singly';
        return {
          key: n,
          actions: transferred(pile, size, n, args.way, singly),
          next: null,
          ...called(args.call, n),
        };
      }),
    );
  },
  say: ({ count }, [n]) => {
    if (!isOpen(count)) return '';
    return n === 0 ? 'moves nothing' : `moves ${cardCount(Number(n))}`;
  },
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Transfer 3 cards singly from top to bottom.',
      choices: [],
      after: '4 5 6 7 8 1 2 3',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Transfer 2 cards as a block from the top to the bottom.',
      choices: [],
      after: '3 4 5 1 2',
    },
    { before: '1 2 3', sentence: 'Transfer 7 cards from top to bottom.', choices: [], after: '2 3 1' },
    { before: '1 2 3 4', sentence: 'Move 1 card from bottom to top.', choices: [], after: '4 1 2 3' },
    {
      before: 'n = 2; pile 1: 1 2 3',
      sentence: 'Transfer N cards from top to bottom of pile 1.',
      choices: [],
      after: 'pile 1: 3 1 2',
    },
  ],
});
