import { byProgram, defineMessage } from './message.ts';

export const certificateRuleEndless = defineMessage({
  code: 'certificate-rule-endless',
  severity: 'error',
  words: () => 'Under the rule in the certificate the performer goes on for ever.',
  remedy: () => 'The proof does not hold: prove the note again.',
  shown: byProgram(),
});
