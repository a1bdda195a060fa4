import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpQuote = defineMessage({
  code: 'set-up-quote',
  severity: 'error',
  words: (facts) => `The name "${text(facts.word)}" cannot stand here.`,
  remedy: () => 'Put a comma before it if it is a card of its own.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of ⟦"lamp"⟧' }), { word: 'lamp' }),
});
