import { defineMessage, noteOf, onReading } from './message.ts';

export const wordTwice = defineMessage({
  code: 'word-twice',
  severity: 'error',
  words: () => 'The same word is there twice.',
  remedy: () => 'Write each word once.',
  shown: onReading(noteOf({ working: '1. ⟦Name "lamp" or "lamp", call the number of its letters N⟧.' })),
});
