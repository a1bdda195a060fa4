import { byProgram, defineMessage, text } from './message.ts';

export const certificateSet = defineMessage({
  code: 'certificate-set',
  severity: 'error',
  words: (facts) =>
    `The certificate speaks of ${text(facts.said)} tables, but there are ${text(facts.tables)}.`,
  remedy: () => 'The proof does not hold: prove the note again.',
  shown: byProgram({ tables: 12, said: 10 }),
});
