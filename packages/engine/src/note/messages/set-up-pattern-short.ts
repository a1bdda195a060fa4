import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpPatternShort = defineMessage({
  code: 'set-up-pattern-short',
  severity: 'error',
  words: (facts) => `${text(facts.count)} cards are fewer than one round of ${text(facts.length)}.`,
  remedy: () => 'Write a larger number, or fewer kinds.',
  shown: onReading(
    noteOf({ setUp: '- packet: ⟦clubs hearts spades diamonds repeated, 3 cards⟧, face down' }),
    { count: 3, length: 4 },
  ),
});
