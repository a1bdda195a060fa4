import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpAttributeValue = defineMessage({
  code: 'set-up-attribute-value',
  severity: 'error',
  words: (facts) => `Of the entries of "${text(facts.name)}", some have a value and some have none.`,
  remedy: () => 'Write such as "hearts = spring" for every entry.',
  shown: onReading(
    noteOf({ setUp: '- packet: A-8 of clubs, face down\n- season: hearts = spring, ⟦clubs⟧' }),
    { name: 'season' },
  ),
});
