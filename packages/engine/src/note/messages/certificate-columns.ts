import { byProgram, defineMessage, text } from './message.ts';

export const certificateColumns = defineMessage({
  code: 'certificate-columns',
  severity: 'error',
  words: (facts) =>
    `The certificate reckons with columns that the step ${text(facts.operation)} does not have.`,
  remedy: () => 'Take the file as it was written.',
  shown: byProgram({ operation: '2' }),
});
