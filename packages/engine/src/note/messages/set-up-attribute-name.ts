import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpAttributeName = defineMessage({
  code: 'set-up-attribute-name',
  severity: 'error',
  words: (facts) =>
    `"${text(facts.name)}" cannot be the name of an attribute: the pack has it, or sentences are made of it.`,
  remedy: () => 'Choose another name.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- ⟦red⟧: hearts' }), { name: 'red' }),
});
