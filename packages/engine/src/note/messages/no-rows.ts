import { defineMessage, noteOf, onReading } from './message.ts';

export const noRows = defineMessage({
  code: 'no-rows',
  severity: 'error',
  words: () => 'There must be at least one row and one column.',
  remedy: () => 'Write how many rows, and how many cards to a row.',
  shown: onReading(noteOf({ working: '1. ⟦Lay out the packet in 0 rows of 2⟧.' })),
});
