import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpRangeSuits = defineMessage({
  code: 'set-up-range-suits',
  severity: 'error',
  words: (facts) =>
    `A range of cards must stay in one suit, not go from ${text(facts.from)} to ${text(facts.to)}.`,
  remedy: () => 'Write one range for each suit.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦AC-4H⟧, face down' }), { from: 'clubs', to: 'hearts' }),
});
