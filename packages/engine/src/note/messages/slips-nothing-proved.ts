import { byProgram, defineMessage, text } from './message.ts';

export const slipsNothingProved = defineMessage({
  code: 'slips-nothing-proved',
  severity: 'error',
  words: (facts) => `A slip can only spoil what is proved; the verdict is ${text(facts.verdict)}.`,
  remedy: () => 'Mend the routine until a sentence is proved.',
  shown: byProgram({ verdict: 'refuted' }),
});
