import { MOST_SENTENCE } from '../limits.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

export const sentenceTooLong = defineMessage({
  code: 'sentence-too-long',
  severity: 'error',
  words: (facts) => `A paragraph of more than ${text(facts.most)} characters is not read as sentences.`,
  remedy: () => 'Divide it into steps.',
  shown: onReading(
    noteOf({
      working: `1. ⟦${'Cut the packet. '.repeat(4).slice(0, 60)}⟧${'Cut the packet. '.repeat(MOST_SENTENCE / 16)}`,
    }),
    { most: MOST_SENTENCE },
  ),
});
