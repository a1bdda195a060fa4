import { byProgram, defineMessage, text } from './message.ts';

export const certificateStart = defineMessage({
  code: 'certificate-start',
  severity: 'error',
  words: (facts) => `The set-up does not meet what the certificate needs at ${text(facts.location)}.`,
  remedy: () => 'The proof does not hold: prove the note again.',
  shown: byProgram({ location: '0:packet:8,' }),
});
