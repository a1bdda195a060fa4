import { defineMessage, noteOf, onReading, text } from './message.ts';

export const tooManyPiles = defineMessage({
  code: 'too-many-piles',
  severity: 'error',
  words: (facts) => `There may be at most ${text(facts.most)} piles.`,
  remedy: () => 'Use fewer piles.',
  shown: onReading(
    noteOf({ working: '1. ⟦Deal the packet into 500 piles⟧.\n2. Gather the piles left on right.' }),
    { most: 104 },
  ),
});
