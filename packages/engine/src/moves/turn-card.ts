import type { PileRef, PlaceRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, mark } from '../pictures/actions.ts';
import { printOrdinal } from '../phrases/tokens.ts';
import { decided } from './handling.ts';
import { defineMove, pileName, pileSize, placeIndex, stuck } from './move.ts';

type TurnCardArgs = { pile: PileRef; at?: PlaceRef; how: 'over' | 'face up' | 'face down' };

/** P14: one card turned in its place. `over` is relative to how it lies, `face up` and `face down` are not. */
export const turnCard = defineMove<TurnCardArgs>({
  id: 'turn-card',
  procedures: ['P14'],
  hands: 'turn',
  title: 'turn one card in place',
  phrases: [
    phrase('turn {at:place} [of {pile:pile}] {how=over|face up|face down} in place'),
    phrase('turn {at:nthcard} [of {pile:pile}] {how=over|face up|face down}'),
    phrase('turn over {at:nthcard} [of {pile:pile}]', { how: 'over' }),
    phrase('turn over {at:place} [of {pile:pile}] in place', { how: 'over' }),
    phrase('turn {at:place} [of {pile:pile}] {how=face up|face down}'),
    phrase('(turn|reverse) any card [of {pile:pile}] {how=over|face up|face down} [in place]'),
    phrase('(reverse|turn over) any card [of {pile:pile}] [in place]', { how: 'over' }),
    phrase('reverse {at:place} [of {pile:pile}] [in place]', { how: 'over' }),
  ],
  defaults: { pile: 'packet' },
  help: 'One card is turned over where it lies. Its place and all other cards stay as they are.',
  caution: 'Turning over changes whichever way it faces; face up and face down say how it lies afterwards.',
  synonyms: ['reverse a card'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const all = Array.from({ length: size }, (_, i) => i);
    const wanted =
      args.at === undefined ? all : all.filter((i) => i === placeIndex(args.at as PlaceRef, size, view));
    if (wanted.length === 0) return stuck('no-such-card', { pile, size });
    const turn = (i: number) =>
      args.how === 'over'
        ? carry(pile, i, 1, pile, i, { turned: 'side' })
        : mark(pile, i, 1, 'up', args.how === 'face up' ? 'set' : 'clear');
    return decided(wanted.map((i) => ({ key: i + 1, actions: [turn(i)], next: null })));
  },
  say: ({ at }, [n]) => (at === undefined ? `turns the ${printOrdinal(Number(n))} card` : ''),
  examples: [
    { before: '1 2 3 4', sentence: 'Turn the 3rd card over.', choices: [], after: '1 2 3^ 4' },
    { before: '1 2 3^ 4^', sentence: 'Turn the bottom card over in place.', choices: [], after: '1 2 3^ 4' },
    { before: '1^ 2', sentence: 'Turn the top card face up.', choices: [], after: '1^ 2' },
    { before: '1 2 3', sentence: 'Turn any card over in place.', choices: [2], after: '1 2^ 3' },
    {
      before: 'n = 2; pile 1: 1 2 3',
      sentence: 'Turn the Nth card of pile 1 over.',
      choices: [],
      after: 'pile 1: 1 2^ 3',
    },
  ],
});
