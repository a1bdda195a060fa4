import { defineMessage, noteOf, onReading, text } from './message.ts';

/** Sentences that each name one thing more. */
function names(n: number): string {
  return Array.from(
    { length: n },
    (_, i) => `1. The spectator notes the top card, call it name${letters(i)}.\n`,
  ).join('');
}

function letters(i: number): string {
  return `${String.fromCharCode(97 + Math.floor(i / 26))}${String.fromCharCode(97 + (i % 26))}`;
}

export const tooManyMarks = defineMessage({
  code: 'too-many-marks',
  severity: 'error',
  words: (facts) => `At most ${text(facts.most)} cards can be marked in one note.`,
  remedy: () => 'Mark fewer cards.',
  shown: onReading(noteOf({ working: `${names(14)}1. ⟦The spectator notes the top card, call it last⟧.` }), {
    most: 14,
  }),
});
