import { byProgram, defineMessage } from './message.ts';

export const certificateHash = defineMessage({
  code: 'certificate-hash',
  severity: 'error',
  words: () => 'The certificate belongs to another note.',
  remedy: () => 'Prove the note again.',
  shown: byProgram(),
});
