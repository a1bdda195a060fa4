import { byProgram, defineMessage } from './message.ts';

export const freedomSomeUnsettled = defineMessage({
  code: 'freedom-some-unsettled',
  severity: 'error',
  words: () => 'Some choices of the mix are safe; which ones is not worked out.',
  remedy: () => 'Put the mix into the note to see.',
  shown: byProgram(),
});
