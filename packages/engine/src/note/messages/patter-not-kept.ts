import { defineMessage, listed, noteOf, onReading } from './message.ts';

export const patterNotKept = defineMessage({
  code: 'patter-not-kept',
  severity: 'warning',
  words: (facts) => `The patter asks for less than the step leaves open: ${listed(facts.said)}.`,
  remedy: () => 'Write it into the step, so that the verdict builds on it, or say it otherwise.',
  shown: onReading(
    noteOf({
      working: '1. ⟦Bury the top card anywhere.⟧\n\n   > "Anywhere you like, only not right to the bottom."',
    }),
    { said: ['not right to the bottom'] },
  ),
});
