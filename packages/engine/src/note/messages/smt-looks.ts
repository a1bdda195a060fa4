import { byProgram, defineMessage } from './message.ts';

export const smtLooks = defineMessage({
  code: 'smt-looks',
  severity: 'error',
  words: () => 'A working that looks at cards is not written for a solver.',
  remedy: () => 'Leave out the steps that look at cards.',
  shown: byProgram(),
});
