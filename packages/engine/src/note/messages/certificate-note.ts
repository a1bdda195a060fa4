import { byProgram, defineMessage, text } from './message.ts';

export const certificateNote = defineMessage({
  code: 'certificate-note',
  severity: 'error',
  words: (facts) => `The note is no longer understood (${text(facts.code)}).`,
  remedy: () => 'Mend the note and prove it again.',
  shown: byProgram({ code: 'no-working' }),
});
