import { defineMessage, noteOf, onPerforming, text } from './message.ts';

export const skipsDoNotReach = defineMessage({
  code: 'skips-do-not-reach',
  severity: 'error',
  words: (facts) =>
    `${text(facts.cards)} cards in ${text(facts.piles)} piles: gathering by skips does not reach every pile.`,
  remedy: () => 'Choose numbers without a common divisor.',
  shown: onPerforming(
    noteOf({ working: '1. Deal the packet into 4 piles.\n2. ⟦Gather the piles by skips⟧.' }),
    { cards: 8, piles: 4 },
  ),
});
