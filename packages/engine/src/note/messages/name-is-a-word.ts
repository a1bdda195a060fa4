import { defineMessage, noteOf, onReading, text } from './message.ts';

export const nameIsAWord = defineMessage({
  code: 'name-is-a-word',
  severity: 'error',
  words: (facts) =>
    `"${text(facts.name)}" is a word that sentences are made of, so nothing can be called by it.`,
  remedy: () => 'Choose another name.',
  shown: onReading(noteOf({ working: '1. ⟦The spectator notes the top card, call it red⟧.' }), {
    name: 'red',
  }),
});
