import { defineMessage, noteOf, onReading, text } from './message.ts';

export const markNotPut = defineMessage({
  code: 'mark-not-put',
  severity: 'error',
  words: (facts) => `No card has been called "${text(facts.name)}" by now.`,
  remedy: (facts) =>
    `Mark it first, such as "The spectator notes the top card, call it ${text(facts.name)}."`,
  shown: onReading(noteOf({ ending: '- The ⟦chosen⟧ card is on top.' }), { name: 'chosen', known: [] }),
});
