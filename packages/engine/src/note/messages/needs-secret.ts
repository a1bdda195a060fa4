import { byProgram, defineMessage, text } from './message.ts';

export const needsSecret = defineMessage({
  code: 'needs-secret',
  severity: 'error',
  words: (facts) => `At step ${text(facts.step)} the performer would need to know what was done in secret.`,
  remedy: () => 'Make that choice open, or let the performer choose before it.',
  shown: byProgram({ step: '2' }),
});
