import { defineMessage, noteOf, onReading, text } from './message.ts';

export const numberTooLarge = defineMessage({
  code: 'number-too-large',
  severity: 'error',
  words: (facts) => `Numbers up to ${text(facts.most)} can be named; ${text(facts.number)} is too large.`,
  remedy: () => 'Give a smaller bound.',
  shown: onReading(noteOf({ working: '1. ⟦The spectator names a number from 1 to 5000, call it N⟧.' }), {
    number: 5000,
    most: 1000,
  }),
});
