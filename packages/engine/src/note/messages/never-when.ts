import { byProgram, defineMessage } from './message.ts';

export const neverWhen = defineMessage({
  code: 'never-when',
  severity: 'error',
  words: () => 'The condition of the sentence is never met.',
  remedy: () => 'Change the condition, or leave it out.',
  shown: byProgram(),
});
