import { defineMessage, noteOf, onReading } from './message.ts';

export const looksUnseen = defineMessage({
  code: 'looks-unseen',
  severity: 'error',
  words: () => 'Behind the back or under the table nobody can look at the cards, as this step asks for.',
  remedy: () => 'Let it be done in view, or choose a step that needs no look.',
  shown: onReading(noteOf({ working: '1. ⟦Take out the red cards behind your back⟧.' })),
});
