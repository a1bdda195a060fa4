import { defineMessage, noteOf, onReading } from './message.ts';

export const blocksOfNone = defineMessage({
  code: 'blocks-of-none',
  severity: 'error',
  words: () => 'A block must have at least one card.',
  remedy: () => 'Write a number from 1 on.',
  shown: onReading(noteOf({ working: '1. ⟦Put the blocks of 0 cards in any order⟧.' })),
});
