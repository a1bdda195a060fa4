import { byProgram, defineMessage, listed } from './message.ts';

export const certificateNoForm = defineMessage({
  code: 'certificate-no-form',
  severity: 'error',
  words: (facts) =>
    `The proof of sentence ${listed(facts.sentences)} cannot be written down as a certificate.`,
  remedy: () => 'Leave those sentences out, or do without a certificate.',
  shown: byProgram({ sentences: ['1'] }),
});
