import { defineMessage, noteOf, onReading } from './message.ts';

export const stepEmpty = defineMessage({
  code: 'step-empty',
  severity: 'error',
  words: () => 'This step has no sentence.',
  remedy: () => 'Write what is done, or delete the step.',
  shown: onReading(noteOf({ working: '1. Cut the packet.\n⟦2.⟧' })),
});
