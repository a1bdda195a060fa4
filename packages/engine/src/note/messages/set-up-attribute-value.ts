import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpAttributeValue = defineMessage({
  code: 'set-up-attribute-value',
  severity: 'error',
  words: (facts) => `This is not a value of "${text(facts.name)}".`,
  remedy: () => 'Write one word or one number.',
  shown: onReading(
    noteOf({ setUp: '- packet: A-8 of clubs, face down\n- season: hearts = spring, ⟦clubs⟧' }),
    { name: 'season' },
  ),
});
