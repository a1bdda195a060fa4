import { defineMessage, onReading } from './message.ts';

export const noEndingLines = defineMessage({
  code: 'no-ending-lines',
  severity: 'warning',
  words: () => 'The ending has no sentences, so there is nothing to prove.',
  remedy: () => 'Begin each sentence with a dash, such as "- All cards are face down."',
  shown: onReading(
    '## Set-up\n- packet: A-8 of clubs, face down\n\n## Working\n1. Cut the packet.\n\n## ⟦Ending⟧\nEverything comes right.\n',
  ),
});
