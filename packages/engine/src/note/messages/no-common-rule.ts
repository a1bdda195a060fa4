import { byProgram, defineMessage } from './message.ts';

export const noCommonRule = defineMessage({
  code: 'no-common-rule',
  severity: 'error',
  words: () => 'There is no one way for the performer to choose that makes all sentences true.',
  remedy: () => 'Let each ending have its own routine, or change a sentence.',
  shown: byProgram(),
});
