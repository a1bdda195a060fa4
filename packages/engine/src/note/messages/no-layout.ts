import { defineMessage, noteOf, onPerforming } from './message.ts';

export const noLayout = defineMessage({
  code: 'no-layout',
  severity: 'error',
  words: () => 'There are no cards in rows and columns.',
  remedy: () => 'Lay them out first, such as "Lay out the packet in 2 rows of 4."',
  shown: onPerforming(noteOf({ working: '1. ⟦Gather the rows⟧.' })),
});
