import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpAttributeEmpty = defineMessage({
  code: 'set-up-attribute-empty',
  severity: 'error',
  words: (facts) => `The attribute "${text(facts.name)}" has no cards on its line.`,
  remedy: () => 'Write which cards are so, such as "hearts, diamonds".',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- value:⟦⟧' }), { name: 'value' }),
});
