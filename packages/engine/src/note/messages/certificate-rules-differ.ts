import { byProgram, defineMessage } from './message.ts';

export const certificateRulesDiffer = defineMessage({
  code: 'certificate-rules-differ',
  severity: 'error',
  words: () =>
    'The certificate has different rules for its sentences, but the performer can follow only one.',
  remedy: () => 'The proof does not hold: prove the note again.',
  shown: byProgram(),
});
