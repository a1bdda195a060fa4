import { defineMessage, noteOf, onReading, text } from './message.ts';

export const straySign = defineMessage({
  code: 'stray-sign',
  severity: 'error',
  words: (facts) => `The sign ${text(facts.sign)} is not read in a sentence.`,
  remedy: () => 'Write it in words or digits.',
  shown: onReading(noteOf({ working: '1. Cut the packet at ⟦½⟧.' }), { sign: '½' }),
});
