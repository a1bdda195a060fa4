import { defineMessage, noteOf, onReading, text } from './message.ts';

export const nameIsANumber = defineMessage({
  code: 'name-is-a-number',
  severity: 'error',
  words: (facts) => `"${text(facts.name)}" is a number, so nothing can be called by it.`,
  remedy: () => 'Choose a letter or a word.',
  shown: onReading(noteOf({ working: '1. ⟦The spectator names a number from 1 to 4, call it four⟧.' }), {
    name: 'four',
  }),
});
