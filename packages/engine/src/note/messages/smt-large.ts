import { byProgram, defineMessage, text } from './message.ts';

export const smtLarge = defineMessage({
  code: 'smt-large',
  severity: 'error',
  words: (facts) =>
    `The working is too large to be written for a solver within ${text(facts.work)} units of work.`,
  remedy: () => 'Allow more work, use fewer cards, or fewer rounds.',
  shown: byProgram({ work: 20000000 }),
});
