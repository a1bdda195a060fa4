import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpValueNumber = defineMessage({
  code: 'set-up-value-number',
  severity: 'error',
  words: (facts) => `The value of a card must be a number; "${text(facts.value)}" is none.`,
  remedy: () => 'Write a whole number.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- value: ⟦aces = high⟧' }), {
    value: 'high',
  }),
});
