import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpWord = defineMessage({
  code: 'set-up-word',
  severity: 'error',
  words: (facts) => `"${text(facts.word)}" is not understood in a set-up.`,
  remedy: () => 'Write cards, or a number of cards of a kind, or an order by its name.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦violets⟧, face down' }), { word: 'violets', near: [] }),
});
