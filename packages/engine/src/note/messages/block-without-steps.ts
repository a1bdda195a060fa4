import { defineMessage, noteOf, onReading } from './message.ts';

export const blockWithoutSteps = defineMessage({
  code: 'block-without-steps',
  severity: 'error',
  words: () => 'This block has no steps.',
  remedy: () => 'Write its steps in a list under it, three spaces further in, or after its colon.',
  shown: onReading(noteOf({ working: '1. ⟦Any number of times⟧:\n2. Cut the packet.' })),
});
