import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpTakenAsAttribute = defineMessage({
  code: 'set-up-taken-as-attribute',
  severity: 'reading',
  words: (facts) => `"${text(facts.name)}" is taken as an attribute, not as a pile.`,
  remedy: () => 'Write "in any order" or a facing on the line if it is a pile.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- ⟦lucky⟧: AC, 7C' }), {
    name: 'lucky',
  }),
});
