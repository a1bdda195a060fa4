import { defineMessage, noteOf, onReading } from './message.ts';

export const noTimes = defineMessage({
  code: 'no-times',
  severity: 'error',
  words: () => 'Steps done no times are never done.',
  remedy: () => 'Write how often, or delete the block.',
  shown: onReading(noteOf({ working: '1. ⟦0 times⟧:\n   1. Cut the packet.' })),
});
