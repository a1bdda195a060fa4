import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { called, cardCount, decided, named, pushOff } from './handling.ts';
import { allowed, defineMove, pileName, pileSize, stuck } from './move.ts';

type PushOffArgs = { pile: PileRef; count: Amount; to: PileRef; call?: string };

const GROUP = '[as a group|as one|together|without changing their order|without reversing them]';

/** P25: some cards taken off the top as one group, their order kept. */
export const pushOffCards = defineMove<PushOffArgs>({
  id: 'push-off',
  procedures: ['P25'],
  hands: 'deal',
  title: 'push off as a group',
  phrases: [
    phrase(
      `(push|take|thumb|spread|lift) off [the top] {count:cards} ${GROUP} [from {pile:pile}] ` +
        `[(to|onto|on) {to:newpile}] ${GROUP}[, call (it|the number) {call:newname}]`,
    ),
    phrase(
      `(take|move) [the top] {count:cards} ${GROUP} [from {pile:pile}] [(to|onto|on) {to:newpile}] ${GROUP}` +
        '[, call (it|the number) {call:newname}]',
    ),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help: 'Cards are taken off the top as one group and laid on another pile. Their order stays as it was.',
  caution: 'Pushing off keeps the order, dealing one by one reverses it. Any number may be none or all.',
  synonyms: ['take off', 'take', 'thumb off'],
  brings: ({ to, call }) => ({ piles: named(to), numbers: call === undefined ? [] : [call] }),
  readings: () => [
    { word: 'push off', taken: 'as one group, order kept', other: 'Deal ... cards to the table' },
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const counts = allowed(args.count, 0, size, view);
    if (counts.length === 0) return stuck('not-enough-cards', { pile, size });
    return decided(
      counts.map((k) => ({
        key: k,
        actions: pushOff(pile, k, pileName(args.to, view)),
        next: null,
        ...called(args.call, k),
      })),
    );
  },
  say: (_args, [k]) => (k === 0 ? 'takes nothing' : `takes ${cardCount(Number(k))}`),
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
