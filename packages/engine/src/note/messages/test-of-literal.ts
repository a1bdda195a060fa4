import { defineMessage, noteOf, onReading, text } from './message.ts';

export const testOfLiteral = defineMessage({
  code: 'test-of-literal',
  severity: 'error',
  words: (facts) => `${text(facts.n)} always is what it is, so there is nothing to test.`,
  remedy: () => 'Test a number that was named, such as "If N is even:".',
  shown: onReading(noteOf({ working: '1. ⟦If 3 is even⟧: cut the packet.' }), { n: 3 }),
});
