import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { defineMove, pileSize } from './move.ts';
import { badName } from './name-number.ts';

type CountPileArgs = { pile: PileRef; call: string };

/** P43, P46: the number of cards in a pile gets a name; nothing moves. */
export const countPile = defineMove<CountPileArgs>({
  id: 'count-pile',
  procedures: ['P43', 'P46'],
  hands: 'choose',
  title: 'count a pile',
  phrases: [
    phrase('count {pile:pile}, call the number {call:newname}'),
    phrase('count [the cards (of|in)] {pile:pile}, call (it|the number) {call:newname}'),
    phrase('call the number of cards (of|in) {pile:pile} {call:newname}'),
  ],
  defaults: {},
  help: 'The cards of a pile are counted as they lie, and later sentences may use the number.',
  caution: 'Counting cards onto the table would reverse them; here they only are counted.',
  synonyms: ['how many'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  options(args, view) {
    const size = pileSize(args.pile, view);
    return [{ key: size, actions: [], next: null, off: 0, set: { [args.call]: size } }];
  },
  say: () => '',
  examples: [
    {
      before: 'packet: 1 2; pile 1: 3 4 5',
      sentence: 'Count pile 1, call the number N.',
      choices: [],
      after: 'n = 3; packet: 1 2; pile 1: 3 4 5',
    },
  ],
});
