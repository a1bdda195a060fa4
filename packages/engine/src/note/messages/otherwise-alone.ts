import { defineMessage, noteOf, onReading } from './message.ts';

export const otherwiseAlone = defineMessage({
  code: 'otherwise-alone',
  severity: 'error',
  words: () => 'There is no "If" before this "Otherwise".',
  remedy: () => 'Put it directly after the steps of an "If".',
  shown: onReading(noteOf({ working: '1. Cut the packet.\n2. ⟦Otherwise⟧:\n   1. Turn the packet over.' })),
});
