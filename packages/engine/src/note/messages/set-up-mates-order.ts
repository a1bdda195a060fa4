import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpMatesOrder = defineMessage({
  code: 'set-up-mates-order',
  severity: 'error',
  words: () => 'How the mates lie is not said.',
  remedy: () => 'Add "in mirror order", "in the same order" or "side by side".',
  shown: onReading(noteOf({ setUp: '- packet: 4 red cards⟦, then their mates⟧, face down' })),
});
