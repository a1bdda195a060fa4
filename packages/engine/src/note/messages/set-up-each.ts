import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpEach = defineMessage({
  code: 'set-up-each',
  severity: 'error',
  words: () => 'This does not say what each card may be.',
  remedy: () => 'Write kinds, such as "each red or black".',
  shown: onReading(noteOf({ setUp: '- packet: 4 cards each ⟦violet⟧, face down' }), {
    word: 'violet',
    near: [],
  }),
});
