import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpOrderNotSaid = defineMessage({
  code: 'set-up-order-not-said',
  severity: 'error',
  words: (facts) => `The order of "${text(facts.what)}" is not said.`,
  remedy: () => 'Add "in any order", or write them one by one.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦full pack⟧, face down' }), { what: 'full pack' }),
});
