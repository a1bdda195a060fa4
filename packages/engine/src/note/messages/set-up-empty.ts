import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpEmpty = defineMessage({
  code: 'set-up-empty',
  severity: 'error',
  words: () => 'The set-up has no cards.',
  remedy: () => 'Add a line such as "- packet: full pack in any order, face down".',
  shown: onReading(noteOf({ setUp: '- ⟦packet: empty⟧' })),
});
