import { defineMessage, listed, noteOf, onReading } from './message.ts';

export const setUpEachOne = defineMessage({
  code: 'set-up-each-one',
  severity: 'error',
  words: (facts) => `A card cannot be more than one of ${listed(facts.choices)}.`,
  remedy: () => 'Take them from one attribute.',
  shown: onReading(noteOf({ setUp: '- packet: 4 cards each ⟦red or hearts⟧, face down' }), {
    choices: ['red', 'heart'],
  }),
});
