import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpKindCount = defineMessage({
  code: 'set-up-kind-count',
  severity: 'error',
  words: (facts) => `How many ${text(facts.kind)} there are is not said.`,
  remedy: () => 'Write a number before the kind.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦red cards⟧, face down' }), { kind: 'red cards' }),
});
