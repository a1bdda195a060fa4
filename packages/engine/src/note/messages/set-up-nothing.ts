import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpNothing = defineMessage({
  code: 'set-up-nothing',
  severity: 'error',
  words: (facts) => `The pile "${text(facts.pile)}" has no cards on its line.`,
  remedy: () => 'Write its cards, or "empty".',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- table:⟦⟧' }), { pile: 'table' }),
});
