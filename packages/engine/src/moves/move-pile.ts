import { trouble } from '../base/diagnostic.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { layOn, named } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type MovePileArgs = { pile: PileRef; to: PileRef };

/** P65, P71: a whole pile goes to another place as it is: to a pocket, to a person, to the discard. */
export const movePile = defineMove<MovePileArgs>({
  id: 'move-pile',
  procedures: ['P65', 'P71'],
  hands: 'hand over',
  title: 'move a pile',
  phrases: [
    phrase('move {pile:pile} (to|into) {to:newpile}'),
    phrase('(put|place) {pile:pile} (in|into) {to:newpile}'),
    phrase('(hand|give|pass) {pile:pile} (to|over to|across to) {to:newpile}'),
    phrase('(discard|eliminate) {pile:pile}', { to: 'discard' }),
    phrase('(put|lay|set) {pile:pile} aside', { to: 'aside' }),
    phrase('pocket {pile:pile}', { to: 'pocket' }),
  ],
  defaults: {},
  help: 'A pile is put somewhere else as it is, on top of what may lie there.',
  caution: 'Nothing is turned and no order changes; only the name of its place does.',
  synonyms: ['discard', 'put aside'],
  brings: ({ to }) => ({ piles: named(to) }),
  check: ({ pile, to }) => (same(pile, to) ? [trouble('pile-twice')] : []),
  options: (args, view) => [
    {
      key: 'moved',
      actions: layOn(pileName(args.pile, view), pileSize(args.pile, view), pileName(args.to, view)),
      next: null,
      off: 0,
    },
  ],
  say: () => '',
  examples: [
    {
      before: 'n = 2; pile 1: 1; pile 2: 2 3^',
      sentence: 'Put pile N into the pocket.',
      choices: [],
      after: 'pile 1: 1; pocket: 2 3^',
    },
    { before: 'discard: 1; pile 1: 2 3', sentence: 'Discard pile 1.', choices: [], after: 'discard: 2 3 1' },
  ],
});
