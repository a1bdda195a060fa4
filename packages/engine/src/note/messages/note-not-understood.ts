import { byProgram, defineMessage } from './message.ts';

export const noteNotUnderstood = defineMessage({
  code: 'note-not-understood',
  severity: 'error',
  words: () => 'The note is not understood, so nothing can be said of its working.',
  remedy: () => 'Mend what is marked in it first.',
  shown: byProgram(),
});
