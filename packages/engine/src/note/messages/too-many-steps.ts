import { MOST_STEPS } from '../limits.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

export const tooManySteps = defineMessage({
  code: 'too-many-steps',
  severity: 'error',
  words: (facts) => `Only the first ${text(facts.most)} steps are read.`,
  remedy: () => 'Use "... times:" for what is repeated.',
  shown: onReading(noteOf({ working: `${'1. Cut the packet.\n'.repeat(MOST_STEPS)}1. ⟦Cut the packet.⟧` }), {
    most: MOST_STEPS,
  }),
});
