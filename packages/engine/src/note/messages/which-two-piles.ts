import { defineMessage, listed, noteOf, onPerforming } from './message.ts';

export const whichTwoPiles = defineMessage({
  code: 'which-two-piles',
  severity: 'error',
  words: (facts) => `There are not just two piles to riffle: ${listed(facts.piles)}.`,
  remedy: () => 'Name the two piles.',
  shown: onPerforming(
    noteOf({
      setUp:
        '- packet: A-8 of clubs, face down\n- left: A-2 of hearts, face down\n- right: A-2 of spades, face down',
      working: '1. ⟦Riffle the two piles together⟧.',
    }),
    { piles: ['left', 'packet', 'right'] },
  ),
});
