import { byProgram, defineMessage } from './message.ts';

export const readingStopped = defineMessage({
  code: 'reading-stopped',
  severity: 'error',
  words: () => 'The note takes so much work to read that reading stopped.',
  remedy: () => 'Shorten the working, or mend the sentences that are not understood.',
  shown: byProgram(),
});
