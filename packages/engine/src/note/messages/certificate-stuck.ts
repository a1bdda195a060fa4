import { byProgram, defineMessage, text } from './message.ts';

export const certificateStuck = defineMessage({
  code: 'certificate-stuck',
  severity: 'error',
  words: (facts) =>
    `At ${text(facts.location)} a performance gets stuck, which the certificate does not allow.`,
  remedy: () => 'The proof does not hold: prove the note again.',
  shown: byProgram({ location: '1:packet:8,' }),
});
