import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpKindsClash = defineMessage({
  code: 'set-up-kinds-clash',
  severity: 'error',
  words: (facts) => `No card is ${text(facts.kind)} and the other too.`,
  remedy: () => 'Leave out one of them.',
  shown: onReading(noteOf({ setUp: '- packet: 4 red cards⟦, each black or red⟧, face down' }), {
    kind: 'red cards',
  }),
});
