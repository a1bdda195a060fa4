import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpCountsDisagree = defineMessage({
  code: 'set-up-counts-disagree',
  severity: 'error',
  words: (facts) => `First it says ${text(facts.first)}, then ${text(facts.second)}.`,
  remedy: () => 'Write one number.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦10 cards alternately red and black, 8 in all⟧, face down' }), {
    first: 10,
    second: 8,
  }),
});
