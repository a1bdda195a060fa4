import { defineMessage, onReading } from './message.ts';

export const noSetUpLines = defineMessage({
  code: 'no-set-up-lines',
  severity: 'error',
  words: () => 'The set-up has no lines.',
  remedy: () => 'Begin each of its lines with a dash, such as "- packet: full pack in any order, face down".',
  shown: onReading(
    '## ⟦Set-up⟧\nA packet of eight cards.\n\n## Working\n1. Cut the packet.\n\n## Ending\n- All cards are face down.\n',
  ),
});
