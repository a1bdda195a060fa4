import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpCountOfWhat = defineMessage({
  code: 'set-up-count-of-what',
  severity: 'error',
  words: (facts) => `It is not said what the ${text(facts.count)} are.`,
  remedy: (facts) => `Write a kind after the number, such as "${text(facts.count)} red cards".`,
  shown: onReading(noteOf({ setUp: '- packet: 8 ⟦violets⟧, face down' }), {
    count: 8,
    word: 'violets',
    near: [],
  }),
});
