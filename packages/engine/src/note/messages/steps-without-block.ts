import { defineMessage, noteOf, onReading } from './message.ts';

export const stepsWithoutBlock = defineMessage({
  code: 'steps-without-block',
  severity: 'error',
  words: () => 'These steps stand under a sentence that is not a block.',
  remedy: () => 'Begin a block above them, such as "Any number of times:", or move them out.',
  shown: onReading(noteOf({ working: '1. Cut the packet.\n   1. ⟦Turn the packet over.⟧' })),
});
