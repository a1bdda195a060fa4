import { defineMessage, noteOf, onReading, text } from './message.ts';

export const unknownCard = defineMessage({
  code: 'unknown-card',
  severity: 'error',
  words: (facts) => `No card "${text(facts.card)}" is in the set-up.`,
  remedy: () => 'Write a card that the set-up lays out.',
  shown: onReading(noteOf({ ending: '- The top card is the ⟦9H⟧.' }), { card: '9H' }),
});
