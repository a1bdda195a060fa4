import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpOpenQuote = defineMessage({
  code: 'set-up-open-quote',
  severity: 'error',
  words: () => 'A quotation mark is left open.',
  remedy: () => 'Close it after the name.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦"⟧lamp, face down' }), { sign: '"' }),
});
