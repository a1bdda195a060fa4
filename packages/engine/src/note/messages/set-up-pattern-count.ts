import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpPatternCount = defineMessage({
  code: 'set-up-pattern-count',
  severity: 'error',
  words: (facts) => `How often the round of ${text(facts.length)} goes is not said.`,
  remedy: () => 'Write how many cards there are, such as "52 cards".',
  shown: onReading(noteOf({ setUp: '- packet: ⟦clubs hearts spades diamonds repeated⟧, face down' }), {
    length: 4,
  }),
});
