import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpAlternately = defineMessage({
  code: 'set-up-alternately',
  severity: 'error',
  words: () => 'This does not say what alternates with what.',
  remedy: () => 'Write two or more kinds, such as "10 cards alternately red and black".',
  shown: onReading(noteOf({ setUp: '- packet: 10 cards alternately red ⟦violets⟧, face down' }), {
    word: 'violets',
    near: [],
  }),
});
