import { byProgram, counted, defineMessage, text } from './message.ts';

export const certificateSentences = defineMessage({
  code: 'certificate-sentences',
  severity: 'error',
  words: (facts) =>
    `The certificate has proofs of ${counted(facts.proofs, 'sentence')}, the note has ${text(facts.sentences)}.`,
  remedy: () => 'Prove the note again.',
  shown: byProgram({ proofs: 1, sentences: 2 }),
});
