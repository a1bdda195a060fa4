import { MOST_NUMBERS } from '../limits.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

/** Sentences that each name one thing more. */
function names(n: number): string {
  return Array.from(
    { length: n },
    (_, i) => `1. The spectator names a number from 1 to 4, call it name${letters(i)}.\n`,
  ).join('');
}

function letters(i: number): string {
  return `${String.fromCharCode(97 + Math.floor(i / 26))}${String.fromCharCode(97 + (i % 26))}`;
}

export const tooManyNumbers = defineMessage({
  code: 'too-many-numbers',
  severity: 'error',
  words: (facts) => `At most ${text(facts.most)} numbers can be named in one note.`,
  remedy: () => 'Name fewer numbers.',
  shown: onReading(
    noteOf({
      working: `1. Cut the packet.\n${names(MOST_NUMBERS)}1. ⟦The spectator names a number from 1 to 4, call it last⟧.`,
    }),
    { most: MOST_NUMBERS },
  ),
});
