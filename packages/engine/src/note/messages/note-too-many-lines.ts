import { MOST_LINES } from '../limits.ts';
import { defineMessage, onReading, text } from './message.ts';

export const noteTooManyLines = defineMessage({
  code: 'note-too-many-lines',
  severity: 'error',
  words: (facts) => `The note has ${text(facts.lines)} lines; at most ${text(facts.most)} are read.`,
  remedy: () => 'Divide the note.',
  shown: onReading(`⟦#⟧${'\n'.repeat(MOST_LINES)}`, { lines: MOST_LINES + 1, most: MOST_LINES }),
});
