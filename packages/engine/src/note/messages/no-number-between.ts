import { defineMessage, noteOf, onReading, text } from './message.ts';

export const noNumberBetween = defineMessage({
  code: 'no-number-between',
  severity: 'error',
  words: (facts) => `There is no such number from ${text(facts.from)} to ${text(facts.to)}.`,
  remedy: () => 'Put the smaller number first and leave one between them.',
  shown: onReading(noteOf({ working: '1. ⟦The spectator names a number from 5 to 3, call it N⟧.' }), {
    from: 5,
    to: 3,
  }),
});
