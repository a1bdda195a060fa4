import { byProgram, defineMessage, text } from './message.ts';

export const noChoiceFits = defineMessage({
  code: 'no-choice-fits',
  severity: 'error',
  words: (facts) => `At step ${text(facts.step)} the performer cannot tell what is possible.`,
  remedy: () => 'Let the performer see or be told what the step needs.',
  shown: byProgram({ step: '2' }),
});
