import { byProgram, defineMessage, text } from './message.ts';

export const certificateNotProved = defineMessage({
  code: 'certificate-not-proved',
  severity: 'error',
  words: (facts) => `Only what is proved has a certificate; the verdict is ${text(facts.verdict)}.`,
  remedy: () => 'See the report for what stands in the way.',
  shown: byProgram({ verdict: 'refuted' }),
});
