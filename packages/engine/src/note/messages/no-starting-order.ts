import { defineMessage, noteOf, onJudging, pileOf } from './message.ts';

export const noStartingOrder = defineMessage({
  code: 'no-starting-order',
  severity: 'error',
  words: (facts) =>
    `${pileOf(facts.pile)} had no known order at the start, so there is nothing to compare with.`,
  remedy: () => 'Give the set-up an order, or say something else of the ending.',
  shown: onJudging(
    noteOf({
      setUp: '- packet: A-4 of clubs in any order, face down',
      ending: '- ⟦The packet is back in its starting order⟧.',
    }),
    { pile: 'packet' },
  ),
});
