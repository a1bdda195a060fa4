import { defineMessage, listed, noteOf, onJudging } from './message.ts';

export const whichPile = defineMessage({
  code: 'which-pile',
  severity: 'error',
  words: (facts) => `There is no packet any more, but several piles: ${listed(facts.piles)}.`,
  remedy: () => 'Say which pile is meant.',
  shown: onJudging(
    noteOf({ working: '1. Deal the packet into 2 piles.', ending: '- ⟦The top card is face down⟧.' }),
    { piles: ['pile 1', 'pile 2'] },
  ),
});
