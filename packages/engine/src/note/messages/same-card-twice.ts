import { defineMessage, noteOf, onReading } from './message.ts';

export const sameCardTwice = defineMessage({
  code: 'same-card-twice',
  severity: 'error',
  words: () => 'The same card is named twice.',
  remedy: () => 'Name two different cards.',
  shown: onReading(noteOf({ working: '1. ⟦Exchange the top card and the top card⟧.' })),
});
