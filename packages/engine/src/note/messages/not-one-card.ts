import { defineMessage, noteOf, onReading, text } from './message.ts';

export const notOneCard = defineMessage({
  code: 'not-one-card',
  severity: 'error',
  words: (facts) => `The sentence speaks of one card, but the number of such cards is ${text(facts.cards)}.`,
  remedy: () => 'Say which one.',
  shown: onReading(noteOf({ ending: '- ⟦The club is next to the 2C⟧.' }), { cards: 8 }),
});
