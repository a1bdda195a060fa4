import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpAttributeTwice = defineMessage({
  code: 'set-up-attribute-twice',
  severity: 'error',
  words: (facts) => `The attribute "${text(facts.name)}" is declared twice.`,
  remedy: () => 'Put both lines into one.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- warm: hearts\n- ⟦warm⟧: clubs' }), {
    name: 'warm',
  }),
});
