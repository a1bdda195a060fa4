import { defineMessage, noteOf, onReading, text } from './message.ts';

export const reading = defineMessage({
  code: 'reading',
  severity: 'reading',
  words: (facts) => `"${text(facts.word)}" is taken to mean: ${text(facts.taken)}.`,
  remedy: (facts) => `Confirm it, or for the other meaning write: ${text(facts.other)}.`,
  shown: onReading(noteOf({ working: '1. ⟦Cut the packet⟧.' }), {
    word: 'cut',
    taken: 'the cut is completed',
    other: 'Cut off ... cards to a new pile',
  }),
});
