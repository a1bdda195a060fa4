import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpOwnName = defineMessage({
  code: 'set-up-own-name',
  severity: 'error',
  words: (facts) => `A card cannot be called "${text(facts.name)}".`,
  remedy: () => 'Choose a name that is no word of a sentence.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦"10C"⟧ "lamp", face down' }), { name: '10C' }),
});
