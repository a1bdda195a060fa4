import { byProgram, defineMessage } from './message.ts';

export const neverWhen = defineMessage({
  code: 'never-when',
  severity: 'error',
  words: () => 'What the sentence makes its condition never happens.',
  remedy: () => 'Change the condition, or leave it out.',
  shown: byProgram(),
});
