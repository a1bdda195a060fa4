import { defineMessage, noteOf, onReading } from './message.ts';

export const oneBranch = defineMessage({
  code: 'one-branch',
  severity: 'error',
  words: () => 'There is only one way here, so there is nothing to choose.',
  remedy: () => 'Give a second way, such as "Do nothing."',
  shown: onReading(noteOf({ working: '1. ⟦Either⟧:\n   - Cut the packet.' })),
});
