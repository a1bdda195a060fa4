import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpPileName = defineMessage({
  code: 'set-up-pile-name',
  severity: 'error',
  words: () => 'This cannot be the name of a pile.',
  remedy: () => 'Use one or two words that no sentence is made of.',
  shown: onReading(noteOf({ setUp: '- ⟦one two three four five⟧: A-8 of clubs, face down' })),
});
