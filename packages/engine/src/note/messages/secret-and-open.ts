import { defineMessage, noteOf, onReading } from './message.ts';

export const secretAndOpen = defineMessage({
  code: 'secret-and-open',
  severity: 'error',
  words: () => 'The sentence says both that this is done in secret and that it is done openly.',
  remedy: () => 'Leave out one of the two.',
  shown: onReading(noteOf({ working: '1. ⟦Cut the packet openly, in secret⟧.' })),
});
