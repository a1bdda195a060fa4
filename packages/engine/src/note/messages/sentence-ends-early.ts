import { defineMessage, noteOf, onReading, orNear } from './message.ts';

export const sentenceEndsEarly = defineMessage({
  code: 'sentence-ends-early',
  severity: 'error',
  words: () => 'This sentence is not finished.',
  remedy: (facts) => orNear(facts, 'Say the rest of it.'),
  shown: onReading(noteOf({ working: '1. ⟦Bury⟧.' }), {
    sentence: 'Bury',
    nearest: [],
    expected: ['cards from the top: "the top 3 cards", "any number of cards from the top"'],
  }),
});
