import { defineMessage, noteOf, onReading, text } from './message.ts';

export const wrongNumber = defineMessage({
  code: 'wrong-number',
  severity: 'error',
  words: (facts) =>
    `The sentence says ${text(facts.said)}, but the number of such cards is ${text(facts.cards)}.`,
  remedy: () => 'Write how many there are.',
  shown: onReading(noteOf({ ending: '- ⟦All but the 3 aces are face down⟧.' }), { said: 3, cards: 1 }),
});
