import { MOST_TEXT } from '../limits.ts';
import { defineMessage, onReading, text } from './message.ts';

export const noteTooLong = defineMessage({
  code: 'note-too-long',
  severity: 'error',
  words: (facts) => `The note has ${text(facts.length)} characters; at most ${text(facts.most)} are read.`,
  remedy: () => 'Take out what is not needed, such as pictures written as text, or divide the note.',
  shown: onReading(`⟦#⟧${' '.repeat(MOST_TEXT)}`, { length: MOST_TEXT + 1, most: MOST_TEXT }),
});
