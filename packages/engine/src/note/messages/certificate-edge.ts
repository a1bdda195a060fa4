import { byProgram, defineMessage, text } from './message.ts';

export const certificateEdge = defineMessage({
  code: 'certificate-edge',
  severity: 'error',
  words: (facts) =>
    `At ${text(facts.location)} the choice ${text(facts.choice)} leads out of what the certificate says.`,
  remedy: () => 'The proof does not hold: prove the note again.',
  shown: byProgram({ location: '0:packet:8,', choice: '3' }),
});
