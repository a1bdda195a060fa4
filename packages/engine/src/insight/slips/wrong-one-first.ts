import { isStuck } from '../../moves/move.ts';
import type { SlipInstead } from './slip.ts';

/** Moves that alternate, with the blank that says which comes first. */
const ALTERNATING: Readonly<
  Record<
    string,
    { readonly blank: string; readonly ways: Readonly<Record<string, readonly [string, string]>> }
  >
> = (() => {
  const order = {
    'down-under': ['under-down', 'the first card goes under instead of down'],
    'under-down': ['down-under', 'the first card goes down instead of under'],
  } as const;
  const turning = {
    'last of each': ['first of each', 'the turning begins with the first card'],
    'first of each': ['last of each', 'the first card is not turned, only the next that comes round'],
  } as const;
  const second = {
    'on top': ['beneath', 'the second card goes beneath instead of on top'],
    beneath: ['on top', 'the second card goes on top instead of beneath'],
  } as const;
  const weave = {
    'out-faro': ['in-faro', 'the top card goes in instead of staying out'],
    'in-faro': ['out-faro', 'the top card stays out instead of going in'],
  } as const;
  const pair = {
    top: ['bottom', 'the bottom card of each pair comes to lie above'],
    bottom: ['top', 'the top card of each pair comes to lie above'],
  } as const;
  return {
    'down-under': { blank: 'order', ways: order },
    'down-under-heap': { blank: 'order', ways: order },
    'deal-turning': { blank: 'from', ways: turning },
    'turn-alternate': { blank: 'from', ways: turning },
    monge: { blank: 'second', ways: second },
    faro: { blank: 'way', ways: weave },
    milk: { blank: 'above', ways: pair },
  };
})();

export const wrongOneFirst: SlipInstead = {
  id: 'wrong-one-first',
  title: 'the wrong one first',
  help: 'Where two things alternate, the wrong one is done first: the first card goes under instead of down, in instead of out, or is turned instead of the second.',
  when: 'instead',
  ways({ step, move, view, option }) {
    const alternating = ALTERNATING[move.id];
    const value = alternating === undefined ? undefined : step.args[alternating.blank];
    const other = typeof value === 'string' ? alternating?.ways[value] : undefined;
    if (alternating === undefined || other === undefined) return [];
    const options = move.options({ ...step.args, [alternating.blank]: other[0] }, view);
    const meant = isStuck(options)
      ? undefined
      : (options.find(({ key }) => key === option.key) ?? options[0]);
    return meant === undefined ? [] : [{ key: 'first', words: other[1], actions: meant.actions }];
  },
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Deal the packet down-under into a pile.',
      choices: [],
      slip: ['first'],
      after: '1 3 4 2',
    },
    {
      before: '1 2 3 4',
      sentence: 'Deal the packet into a pile, turning every second card.',
      choices: [],
      slip: ['first'],
      after: '4 3^ 2 1^',
    },
    { before: '1 2 3 4', sentence: 'Out-faro the packet.', choices: [], slip: ['first'], after: '3 1 4 2' },
  ],
};
