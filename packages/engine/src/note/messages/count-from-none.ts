import { defineMessage, noteOf, onReading } from './message.ts';

export const countFromNone = defineMessage({
  code: 'count-from-none',
  severity: 'error',
  words: () => 'A count down must begin above nothing.',
  remedy: () => 'Write the number it begins with, such as ten.',
  shown: onReading(noteOf({ working: '1. ⟦Count down from 0 until a card hits⟧.' })),
});
