import { byProgram, defineMessage, text } from './message.ts';

export const certificateShape = defineMessage({
  code: 'certificate-shape',
  severity: 'error',
  words: (facts) => `The certificate has not the shape it should have: ${text(facts.what)}.`,
  remedy: () => 'Take the file as it was written.',
  shown: byProgram({ what: 'proofs.0.members' }),
});
