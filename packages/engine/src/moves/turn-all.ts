import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { mark } from '../pictures/actions.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type TurnAllArgs = { pile: PileRef; how: 'over' | 'face up' | 'face down' };

/** P23: every card of a pile righted in its place. */
export const turnAll = defineMove<TurnAllArgs>({
  id: 'turn-all',
  procedures: ['P23'],
  hands: 'turn',
  title: 'right every card',
  phrases: [
    phrase('turn every card [of {pile:pile}] {how=face down|face up|over} in place'),
    phrase('turn (every card|all the cards) [of {pile:pile}] {how=face down|face up}'),
    phrase('turn every face-up card [of {pile:pile}] face down [in place]', { how: 'face down' }),
    phrase('turn every face-down card [of {pile:pile}] face up [in place]', { how: 'face up' }),
    phrase('right (the cards|every card|all the cards|all cards) [of {pile:pile}]', { how: 'face down' }),
    phrase('(right|turn down) (all|every|each) face-up (cards|card) [of {pile:pile}]', { how: 'face down' }),
  ],
  defaults: { pile: 'packet' },
  help: 'Every card is made to face one way where it lies. The order is kept.',
  caution: 'Which cards were turned is lost: afterwards one can speak only of where they lie.',
  synonyms: ['right the cards'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const op = args.how === 'over' ? 'toggle' : args.how === 'face up' ? 'set' : 'clear';
    return [
      { key: args.how, actions: size === 0 ? [] : [mark(pile, 0, size, 'up', op)], next: null, off: 0 },
    ];
  },
  say: () => '',
  examples: [
    { before: '1 2^ 3^ 4', sentence: 'Turn every face-up card face down.', choices: [], after: '1 2 3 4' },
    { before: '1 2^ 3', sentence: 'Turn every card over in place.', choices: [], after: '1^ 2 3^' },
  ],
});
