import { defineMessage, noteOf, onReading } from './message.ts';

export const branchesAreSteps = defineMessage({
  code: 'branches-are-steps',
  severity: 'error',
  words: () => 'The ways of an "Either" are bullets; these are numbered.',
  remedy: () => 'Begin each way with a dash.',
  shown: onReading(noteOf({ working: '1. Either:\n   1. ⟦Cut the packet.⟧\n   2. Turn the packet over.' })),
});
