import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpEnds = defineMessage({
  code: 'set-up-ends',
  severity: 'error',
  words: () => 'The line ends too soon.',
  remedy: () => 'Say the rest of it.',
  shown: onReading(noteOf({ setUp: '- packet: 8⟦⟧' }), { count: 8 }),
});
