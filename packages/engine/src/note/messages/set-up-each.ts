import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpEach = defineMessage({
  code: 'set-up-each',
  severity: 'error',
  words: () => 'This does not say what there is one of each of.',
  remedy: () => 'Write kinds, such as "one of each suit".',
  shown: onReading(noteOf({ setUp: '- packet: 4 cards each ⟦violet⟧, face down' }), {
    word: 'violet',
    near: [],
  }),
});
