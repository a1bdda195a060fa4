import { byProgram, defineMessage } from './message.ts';

export const momentsNotUnderstood = defineMessage({
  code: 'moments-not-understood',
  severity: 'error',
  words: () => 'The note is not understood, so there are no moments to show.',
  remedy: () => 'Mend what is not understood first.',
  shown: byProgram(),
});
