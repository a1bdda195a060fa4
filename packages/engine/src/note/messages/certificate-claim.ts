import { byProgram, defineMessage, text } from './message.ts';

export const certificateClaim = defineMessage({
  code: 'certificate-claim',
  severity: 'error',
  words: (facts) => `What the certificate says at ${text(facts.location)} does not make the sentence true.`,
  remedy: () => 'The proof does not hold: prove the note again.',
  shown: byProgram({ location: '2:packet:8,' }),
});
