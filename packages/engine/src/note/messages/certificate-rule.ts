import { byProgram, defineMessage, text } from './message.ts';

export const certificateRule = defineMessage({
  code: 'certificate-rule',
  severity: 'error',
  words: (facts) =>
    facts.location === undefined
      ? 'The rule in the certificate leads further than it says.'
      : `The rule in the certificate does not say what to choose at ${text(facts.location)}, or says what is not possible there.`,
  remedy: () => 'The proof does not hold: prove the note again.',
  shown: byProgram({ location: '2:packet:8,' }),
});
