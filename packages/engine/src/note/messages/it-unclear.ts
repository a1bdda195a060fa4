import { defineMessage, noteOf, onReading, text } from './message.ts';

export const itUnclear = defineMessage({
  code: 'it-unclear',
  severity: 'error',
  words: (facts) => `It is not clear what "${text(facts.word)}" means here.`,
  remedy: () => 'Write the name of the pile.',
  shown: onReading(noteOf({ working: '1. Turn ⟦it⟧ over.' }), { word: 'it' }),
});
