import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpNotThere = defineMessage({
  code: 'set-up-not-there',
  severity: 'warning',
  words: (facts) => `${text(facts.card)} is not in the set-up.`,
  remedy: () => 'Write a card that is there, or leave it for later.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- warm: hearts, ⟦"lamp"⟧' }), {
    card: '"lamp"',
    near: [],
  }),
});
