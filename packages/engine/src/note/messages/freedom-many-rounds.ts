import { byProgram, defineMessage, text } from './message.ts';

export const freedomManyRounds = defineMessage({
  code: 'freedom-many-rounds',
  severity: 'error',
  words: (facts) =>
    `The mix comes round again, and ${text(facts.ways)} of its choices are too many to look at together.`,
  remedy: () => 'Put the mix into the note to see.',
  shown: byProgram({ ways: 20 }),
});
