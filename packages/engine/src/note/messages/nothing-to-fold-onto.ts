import { defineMessage, noteOf, onPerforming } from './message.ts';

export const nothingToFoldOnto = defineMessage({
  code: 'nothing-to-fold-onto',
  severity: 'error',
  words: () => 'The layout has only one line there, so there is nothing to fold it onto.',
  remedy: () => 'Fold another side.',
  shown: onPerforming(
    noteOf({ working: '1. Lay out the packet in 1 rows of 8.\n2. ⟦Fold the top row down⟧.' }),
    { side: 'top row' },
  ),
});
