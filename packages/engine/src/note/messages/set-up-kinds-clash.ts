import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpKindsClash = defineMessage({
  code: 'set-up-kinds-clash',
  severity: 'error',
  words: (facts) => `Not all of these can be ${text(facts.kind)}.`,
  remedy: () => 'Leave out what contradicts it.',
  shown: onReading(noteOf({ setUp: '- packet: 4 red cards⟦, each black or red⟧, face down' }), {
    kind: 'red cards',
  }),
});
