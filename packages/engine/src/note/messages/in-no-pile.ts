import { defineMessage, noteOf, onPerforming, text } from './message.ts';

export const inNoPile = defineMessage({
  code: 'in-no-pile',
  severity: 'error',
  words: (facts) => `The card "${text(facts.mark)}" is in none of the piles.`,
  remedy: () => 'Ask only while it is in one of them.',
  shown: onPerforming(
    noteOf({
      working:
        '1. The spectator notes the top card, call it chosen.\n2. Deal 4 cards to the table.\n3. Deal the packet into 2 piles.\n4. ⟦The spectator says which pile holds chosen, call it K⟧.\n5. Gather the piles left on right.',
    }),
    { mark: 'chosen', stem: 'pile' },
  ),
});
