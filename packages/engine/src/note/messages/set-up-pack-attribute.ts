import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpPackAttribute = defineMessage({
  code: 'set-up-pack-attribute',
  severity: 'error',
  words: (facts) => `The ${text(facts.name)} of ${text(facts.card)} cannot be changed.`,
  remedy: () => 'Leave it, or declare an attribute of another name.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- suit: ⟦hearts = AC⟧' }), {
    name: 'suit',
    card: 'hearts',
  }),
});
