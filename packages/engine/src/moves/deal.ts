import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { mark, type Action } from '../pictures/actions.ts';
import { called, cardCount, dealSingly, named } from './handling.ts';
import { defineMove, pileName } from './move.ts';
import { badName } from './name-number.ts';
import { chooseNumber, isOpen } from './open.ts';

type DealArgs = {
  pile: PileRef;
  count: Amount;
  to: PileRef;
  face?: Face;
  call?: string;
};

/** How a card is laid when the sentence says so: this is absolute, unlike turning over. */
export type Face = 'face up' | 'face down';

export function showing(face: Face | undefined, pile: string, count: number): Action[] {
  if (face === undefined || count === 0) return [];
  return [mark(pile, 0, count, 'up', face === 'face up' ? 'set' : 'clear')];
}

const DEAL = '(deal|count|deal off|count off|deal out|count out)';

/** P24, P43b, and P40 after a transfer: some cards dealt or counted one by one to another pile, which reverses them. */
export const deal = defineMove<DealArgs>({
  id: 'deal',
  procedures: ['P24', 'P40', 'P43b', 'P67'],
  hands: 'deal',
  title: 'deal some cards',
  phrases: [
    phrase(
      `${DEAL} [the top|the next] {count:cards} [singly|one by one] [from {pile:pile}] (to|onto|on|into|in) {to:newpile} ` +
        '[{face=face up|face down}][, call (it|the number) {call:newname}]',
    ),
    phrase(
      `${DEAL} [the top|the next] {count:cards} [singly|one by one] [from {pile:pile}] ` +
        '[{face=face up|face down}][, call (it|the number) {call:newname}]',
    ),
    phrase(
      `${DEAL} [the top] {count:cards} {face=face up|face down} [from {pile:pile}] [(to|onto|on|into|in) {to:newpile}]` +
        '[, call (it|the number) {call:newname}]',
    ),
    phrase(
      'deal [cards] [singly|one by one|one at a time] [from {pile:pile}] [(to|onto|on|into|in) {to:newpile}] ' +
        'until (told to stop|the spectator says stop|someone says stop)[, call (it|the number) {call:newname}]',
      { count: { of: 'any' } },
    ),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help: 'Cards are dealt one at a time from the top, each on the one before. They end in reverse order; the rest does not change.',
  caution: 'Dealing reverses, pushing off does not. Any number may be none or all.',
  synonyms: ['count', 'count off', 'deal off', 'deal until told to stop'],
  brings: ({ to, call }) => ({ piles: named(to), numbers: call === undefined ? [] : [call] }),
  check: ({ call }) => (call === undefined ? [] : badName(call)),
  readings: () => [
    {
      word: 'deal',
      taken: 'one at a time, so that their order is reversed',
      other: 'Push off ... cards to the table',
    },
  ],
  options(args, view) {
    const to = pileName(args.to, view);
    return chooseNumber(args.count, args.pile, view, (k) => ({
      actions: [...dealSingly(pileName(args.pile, view), k, to), ...showing(args.face, to, k)],
      next: null,
      ...called(args.call, k),
    }));
  },
  say: ({ count }, [k]) =>
    !isOpen(count) ? '' : k === 0 ? 'deals nothing' : `deals ${cardCount(Number(k))}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Deal 3 cards to the table.',
      choices: [],
      after: 'packet: 4 5 6 7 8; table: 3 2 1',
    },
    {
      before: 'packet: 1 2 3 4 5; pile 1: 6',
      sentence: 'Deal any number of cards to pile 1, call it N.',
      choices: [2],
      after: 'n = 2; packet: 3 4 5; pile 1: 2 1 6',
    },
    {
      before: '1 2^ 3 4',
      sentence: 'Deal 3 cards face up to the table.',
      choices: [],
      after: 'packet: 4; table: 3^ 2^ 1^',
    },
  ],
});
