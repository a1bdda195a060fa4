import { defineMessage, noteOf, onReading, text } from './message.ts';

export const unknownAttribute = defineMessage({
  code: 'unknown-attribute',
  severity: 'error',
  words: (facts) => `Nothing says the ${text(facts.attribute)} of ${text(facts.card)}.`,
  remedy: () => 'Say it in the set-up, or speak of something that every card has.',
  shown: onReading(
    noteOf({ setUp: '- packet: 8 red cards, face down', ending: '- ⟦The suits alternate⟧.' }),
    { attribute: 'suit', card: 'a red card' },
  ),
});
