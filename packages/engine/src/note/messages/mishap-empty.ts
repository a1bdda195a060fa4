import { byProgram, defineMessage } from './message.ts';

export const mishapEmpty = defineMessage({
  code: 'mishap-empty',
  severity: 'error',
  words: () => 'What happened is not told in sentences of a working.',
  remedy: () => 'Write it as a step would be: Turn the top card over.',
  shown: byProgram(),
});
