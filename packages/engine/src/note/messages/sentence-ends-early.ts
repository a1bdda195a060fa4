import { defineMessage, noteOf, onReading, orNear } from './message.ts';

export const sentenceEndsEarly = defineMessage({
  code: 'sentence-ends-early',
  severity: 'error',
  words: () => 'This sentence is not finished.',
  remedy: (facts) => orNear(facts, 'Say the rest of it.'),
  shown: onReading(noteOf({ working: '1. ⟦Deal⟧.' }), {
    sentence: 'Deal',
    nearest: [],
    expected: [
      'how many cards: "8 cards", "any number of cards", "an even number of cards", "5 to 10 cards"',
      '"off"',
      '"out"',
    ],
  }),
});
