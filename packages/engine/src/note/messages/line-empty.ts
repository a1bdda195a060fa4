import { defineMessage, noteOf, onReading } from './message.ts';

export const lineEmpty = defineMessage({
  code: 'line-empty',
  severity: 'error',
  words: () => 'There is nothing on this line.',
  remedy: () => 'Write something on it, or delete it.',
  shown: onReading(noteOf({ ending: '- All cards are face down.\n⟦-⟧' })),
});
