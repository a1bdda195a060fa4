import { MOST_HEAD } from '../limits.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

export const headTooLong = defineMessage({
  code: 'head-too-long',
  severity: 'error',
  words: (facts) => `The head is longer than ${text(facts.most)} characters, so it is not read.`,
  remedy: () => 'Keep only title, minutes, credits and readings in the head.',
  shown: onReading(noteOf({ head: `⟦---⟧\n${'# talk\n'.repeat(MOST_HEAD / 7 + 1)}---\n` }), {
    most: MOST_HEAD,
  }),
});
