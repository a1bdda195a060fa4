import { defineMessage, noteOf, onPerforming, pileOf } from './message.ts';

export const noSuchPile = defineMessage({
  code: 'no-such-pile',
  severity: 'error',
  words: (facts) => `${pileOf(facts.pile)} has no cards when the step is done.`,
  remedy: () => 'Name a pile that has cards then.',
  shown: onPerforming(
    noteOf({
      working:
        '1. Deal the packet into 3 piles.\n2. The spectator names a number from 3 to 4, call it N.\n3. ⟦Gather the piles with pile N on top⟧.',
    }),
    { pile: 'pile 4' },
  ),
});
