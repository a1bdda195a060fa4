import { defineMessage, noteOf, onReading, text } from './message.ts';

export const sectionTwice = defineMessage({
  code: 'section-twice',
  severity: 'error',
  words: (facts) => `There is a second section "${text(facts.section)}"; only the first is read.`,
  remedy: () => 'Put both under one heading.',
  shown: onReading(
    noteOf({ setUp: '- packet: A-8 of clubs, face down\n\n## ⟦Set-up⟧\n- table: 9H, face down' }),
    { section: 'Set-up' },
  ),
});
