import { defineMessage, noteOf, onPerforming, text } from './message.ts';

export const noMiddlePile = defineMessage({
  code: 'no-middle-pile',
  severity: 'error',
  words: (facts) => `There are ${text(facts.piles)} piles, so none can go exactly in the middle.`,
  remedy: () => 'Have an odd number of piles.',
  shown: onPerforming(
    noteOf({
      working:
        '1. Deal the packet into 2 piles.\n2. The spectator names a number from 1 to 2, call it N.\n3. ⟦Gather the piles with pile N in the middle⟧.',
    }),
    { stem: 'pile', piles: 2 },
  ),
});
