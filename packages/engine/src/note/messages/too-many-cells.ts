import { defineMessage, noteOf, onReading, text } from './message.ts';

export const tooManyCells = defineMessage({
  code: 'too-many-cells',
  severity: 'error',
  words: (facts) => `A layout may have at most ${text(facts.most)} cells.`,
  remedy: () => 'Lay out fewer cards.',
  shown: onReading(noteOf({ working: '1. ⟦Lay out the packet in 100 rows of 100⟧.' }), { most: 104 }),
});
