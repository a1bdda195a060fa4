import { defineMessage, noteOf, onReading } from './message.ts';

export const rowsNotStated = defineMessage({
  code: 'rows-not-stated',
  severity: 'error',
  words: () => 'How many rows and columns must be written out in digits.',
  remedy: () => 'Write the numbers, such as "in 2 rows of 4".',
  shown: onReading(
    noteOf({
      working:
        '1. The spectator names a number from 1 to 4, call it N.\n2. ⟦Lay out the packet in N rows of 2⟧.',
    }),
  ),
});
