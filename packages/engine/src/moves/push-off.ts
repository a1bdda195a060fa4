import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { called, cardCount, named, pushOff } from './handling.ts';
import { defineMove, pileName } from './move.ts';
import { badName } from './name-number.ts';
import { chooseNumber, isOpen } from './open.ts';

type PushOffArgs = { pile: PileRef; count: Amount; to: PileRef; call?: string };

const GROUP = '[as a group|as one|together|without changing their order|without reversing them]';

/** P25, and P67 with a reckoned answer: some cards taken off the top as one group, their order kept. */
export const pushOffCards = defineMove<PushOffArgs>({
  id: 'push-off',
  procedures: ['P25', 'P67'],
  hands: 'deal',
  title: 'push off as a group',
  phrases: [
    phrase(
      `(push|take|thumb|spread|lift) off [the top] {count:cards} ${GROUP} [from {pile:pile}] ` +
        `(to|onto|on|into|in) {to:newpile} ${GROUP}[, call (it|the number) {call:newname}]`,
    ),
    phrase(
      `(push|take|thumb|spread|lift) off [the top] {count:cards} ${GROUP} [from {pile:pile}]` +
        '[, call (it|the number) {call:newname}]',
    ),
    phrase(
      `(take|move) [the top] {count:cards} ${GROUP} [from {pile:pile}] [(to|onto|on|into|in) {to:newpile}] ${GROUP}` +
        '[, call (it|the number) {call:newname}]',
    ),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help: 'Cards are taken off the top as one group and laid on another pile. Their order stays as it was.',
  caution: 'Pushing off keeps the order, dealing one by one reverses it. Any number may be none or all.',
  synonyms: ['take off', 'take', 'thumb off'],
  brings: ({ to, call }) => ({ piles: named(to), numbers: call === undefined ? [] : [call] }),
  check: ({ call }) => (call === undefined ? [] : badName(call)),
  readings: () => [
    { word: 'push off', taken: 'as one group, order kept', other: 'Deal ... cards to the table' },
  ],
  options(args, view) {
    return chooseNumber(args.count, args.pile, view, (k) => ({
      actions: pushOff(pileName(args.pile, view), k, pileName(args.to, view)),
      next: null,
      ...called(args.call, k),
    }));
  },
  say: ({ count }, [k]) =>
    !isOpen(count) ? '' : k === 0 ? 'takes nothing' : `takes ${cardCount(Number(k))}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Push off 3 cards to the table.',
      choices: [],
      after: 'packet: 4 5 6 7 8; table: 1 2 3',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Take off some cards to the pocket.',
      choices: [2],
      after: 'packet: 3 4 5; pocket: 1 2',
    },
  ],
});
