import { byProgram, defineMessage, text } from './message.ts';

export const restrictionUnsaid = defineMessage({
  code: 'restriction-unsaid',
  severity: 'warning',
  words: (facts) =>
    `The ending rests on "${text(facts.words)}" at step ${text(facts.step)}, and no line of patter beside it says so.`,
  remedy: (facts) => `Say it there: "But ${text(facts.words)}."`,
  shown: byProgram({ step: '2', words: 'not right to the bottom' }),
});
