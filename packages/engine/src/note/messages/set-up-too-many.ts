import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpTooMany = defineMessage({
  code: 'set-up-too-many',
  severity: 'error',
  words: (facts) =>
    `${text(facts.count)} cards are more than a note may lay out; at most ${text(facts.most)} are.`,
  remedy: () => 'Lay out fewer cards.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦300 red cards⟧, face down' }), { count: 300, most: 208 }),
});
