import { byProgram, defineMessage } from './message.ts';

export const certificateMissing = defineMessage({
  code: 'certificate-missing',
  severity: 'error',
  words: () => 'The certificate has no proof of this sentence.',
  remedy: () => 'Prove the note again.',
  shown: byProgram(),
});
