import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpPileTwice = defineMessage({
  code: 'set-up-pile-twice',
  severity: 'error',
  words: (facts) => `The pile "${text(facts.pile)}" has two lines.`,
  remedy: () => 'Put its cards on one line.',
  shown: onReading(
    noteOf({ setUp: '- packet: A-4 of clubs, face down\n- ⟦packet⟧: 5-8 of clubs, face down' }),
    { pile: 'packet' },
  ),
});
