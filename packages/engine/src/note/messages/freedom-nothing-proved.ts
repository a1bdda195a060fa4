import { byProgram, defineMessage, text } from './message.ts';

export const freedomNothingProved = defineMessage({
  code: 'freedom-nothing-proved',
  severity: 'error',
  words: (facts) => `Only what is proved has room for more; the verdict is ${text(facts.verdict)}.`,
  remedy: () => 'Mend the routine until a sentence is proved.',
  shown: byProgram({ verdict: 'refuted' }),
});
