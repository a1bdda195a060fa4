import { defineMessage, onReading } from './message.ts';

export const noWorking = defineMessage({
  code: 'no-working',
  severity: 'error',
  words: () => 'The note has no section "Working".',
  remedy: () => 'Add a heading "## Working" and under it numbered steps, such as "1. Cut the packet."',
  shown: onReading('## ⟦Set-up⟧\n- packet: A-8 of clubs, face down\n'),
});
