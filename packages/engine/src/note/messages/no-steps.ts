import { defineMessage, onReading } from './message.ts';

export const noSteps = defineMessage({
  code: 'no-steps',
  severity: 'error',
  words: () => 'The working has no steps.',
  remedy: () => 'Number the steps, such as "1. Cut the packet."',
  shown: onReading(
    '## Set-up\n- packet: A-8 of clubs, face down\n\n## ⟦Working⟧\nCut the packet.\n\n## Ending\n- All cards are face down.\n',
  ),
});
