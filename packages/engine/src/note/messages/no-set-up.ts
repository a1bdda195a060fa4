import { defineMessage, onReading } from './message.ts';

export const noSetUp = defineMessage({
  code: 'no-set-up',
  severity: 'error',
  words: () => 'The note has no section "Set-up".',
  remedy: () =>
    'Add a heading "## Set-up" and under it a line such as "- packet: full pack in any order, face down".',
  shown: onReading('## ⟦Working⟧\n1. Cut the packet.\n'),
});
