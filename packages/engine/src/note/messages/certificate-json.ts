import { byProgram, defineMessage } from './message.ts';

export const certificateJson = defineMessage({
  code: 'certificate-json',
  severity: 'error',
  words: () => 'The certificate is not JSON.',
  remedy: () => 'Take the file as it was written.',
  shown: byProgram(),
});
