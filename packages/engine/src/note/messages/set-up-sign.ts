import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpSign = defineMessage({
  code: 'set-up-sign',
  severity: 'error',
  words: (facts) => `The sign ${text(facts.sign)} is not read in a set-up.`,
  remedy: () => 'Leave it out, or write it in words.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs ⟦&⟧ 9C' }), { sign: '&' }),
});
