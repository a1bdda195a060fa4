import { defineMessage, noteOf, onReading } from './message.ts';

export const whoRepeats = defineMessage({
  code: 'who-repeats',
  severity: 'error',
  words: () => 'It is not said who decides how often.',
  remedy: () => 'Write "As often as the spectator likes:" or "You choose how often:".',
  shown: onReading(noteOf({ working: '1. ⟦As often as you like⟧:\n   1. Cut the packet.' })),
});
