import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { cardCount, within, type Way } from './handling.ts';
import { defineMove, pileName, START, type Key } from './move.ts';

type HaymowArgs = { pile: PileRef };

const OTHER = '~other';
const TOP = 'top';
const BOTTOM = 'bottom';

/**
 * P8: small packets pass from one hand to the other, from the top to beneath and from the bottom to above in turn. It looks
 * like a shuffle and is a cut. A packet keeps its order, so it passes one card at a time, and only sizes are carried along.
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
    if (left === 0) return [{ key: TOP, actions: [], next: null, off: 0 }];
    const back = left === 1 ? [carry(OTHER, 0, held + 1, pile, 0)] : [];
    const next = left === 1 ? null : 'passing';
    const top: Way = { key: TOP, actions: [carry(pile, 0, 1, OTHER, held), ...back], next };
    // The first packet goes from the top; while there is one card, both ways take it.
    if (view.phase === START) return [{ ...top, off: 0 }];
    return within([top, { key: BOTTOM, actions: [carry(pile, left - 1, 1, OTHER, 0), ...back], next }]);
  },
  say(_args, keys) {
    const packets: { from: Key; size: number }[] = [];
    for (const from of keys) {
      const last = packets.at(-1);
      if (last?.from === from) last.size++;
      else packets.push({ from, size: 1 });
    }
    return `passes ${packets.map(({ size }) => cardCount(size)).join(', ')}`;
  },
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Give the packet a haymow shuffle.',
      choices: ['top', 'bottom', 'bottom', 'bottom', 'top', 'bottom', 'bottom'],
      after: '4 5 6 7 8 1 2 3',
    },
  ],
});
