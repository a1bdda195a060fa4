import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { cardCount, decided, within, type Way } from './handling.ts';
import { defineMove, pileName, START } from './move.ts';

type HaymowArgs = { pile: PileRef };

const OTHER = '~other';
const ABOVE = 'above';
const BENEATH = 'beneath';

/**
 * P8: small packets pass from one hand to the other, from the top to beneath and from the bottom to above in turn. It looks
 * like a shuffle and is a cut.
 */
export const haymow = defineMove<HaymowArgs>({
  id: 'haymow',
  procedures: ['P8'],
  hands: 'cut',
  title: 'haymow shuffle',
  phrases: [
    phrase('give {pile:pile} a haymow shuffle'),
    phrase('(haymow shuffle|shuffle haymow fashion) [{pile:pile}]'),
    phrase('haymow {pile:pile}'),
  ],
  defaults: { pile: 'packet' },
  help: 'Small packets pass to the other hand, in turn from the top to beneath and from the bottom to above, until none is left.',
  caution: 'It mixes nothing: all that happens is one cut.',
  synonyms: ['Charlier shuffle'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const left = sizeOf(view.layout, pile);
    const held = sizeOf(view.layout, OTHER);
    if (left === 0) return [{ key: 0, actions: [], next: null, off: 0 }];
    const above = view.phase === ABOVE;
    const ways: Way[] = [];
    for (let n = left; n >= 1; n--) {
      const pass = above ? carry(pile, left - n, n, OTHER, 0) : carry(pile, 0, n, OTHER, held);
      const done = n === left;
      const actions = done ? [pass, carry(OTHER, 0, held + n, pile, 0)] : [pass];
      ways.push({ key: n, actions, next: done ? null : above ? BENEATH : ABOVE });
    }
    return view.phase === START ? decided(ways) : within(ways);
  },
  say: (_args, keys) => `passes ${keys.map((n) => cardCount(Number(n))).join(', ')}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Give the packet a haymow shuffle.',
      choices: [2, 3, 1, 2],
      after: '4 5 6 7 8 1 2 3',
    },
  ],
});
