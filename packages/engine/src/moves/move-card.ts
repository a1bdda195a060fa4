import type { PileRef, PlaceRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { defineMove, pileName, pileSize, placeIndex, stuck } from './move.ts';

type MoveCardArgs = { pile: PileRef; at: PlaceRef; to: PlaceRef };

/** P9, P63: one card goes from its place to another place of the same pile. */
export const moveCard = defineMove<MoveCardArgs>({
  id: 'move-card',
  procedures: ['P9', 'P63'],
  hands: 'cut',
  title: 'move one card',
  phrases: [
    phrase('move {at:place} [of {pile:pile}] to {to:spot}'),
    phrase('(put|place|transfer|shift) {at:place} [of {pile:pile}] (on|to|in|at) {to:spot}'),
    phrase(
      '(put|place) {at:place} [of {pile:pile}] (beneath|under|underneath) (the others|the rest|the packet)',
      {
        to: { end: 'bottom', n: 1 },
      },
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'One card is moved to another place of its pile. The place named is the one it has afterwards.',
  caution: 'All cards between the two places shift by one.',
  synonyms: ['put the top card on the bottom'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const at = placeIndex(args.at, size, view);
    const to = placeIndex(args.to, size, view);
    if (at < 0 || at >= size || to < 0 || to >= size) return stuck('no-such-card', { pile, size });
    return [{ key: 'moved', actions: at === to ? [] : [carry(pile, at, 1, pile, to)], next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    { before: '1 2 3 4', sentence: 'Move the top card to the bottom.', choices: [], after: '2 3 4 1' },
    { before: '1 2 3 4', sentence: 'Put the bottom card on the top.', choices: [], after: '4 1 2 3' },
    { before: '1 2 3 4 5', sentence: 'Move the 2nd card to the 4th place.', choices: [], after: '1 3 4 2 5' },
    {
      before: 'n = 3; pile 1: 1 2 3 4',
      sentence: 'Move the Nth card of pile 1 to the top.',
      choices: [],
      after: 'pile 1: 3 1 2 4',
    },
  ],
});
