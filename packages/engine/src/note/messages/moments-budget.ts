import { byProgram, defineMessage, text } from './message.ts';

export const momentsBudget = defineMessage({
  code: 'moments-budget',
  severity: 'error',
  words: (facts) =>
    `The working has more moments than were looked at (${text(facts.work)} units of work), so they are not shown.`,
  remedy: () => 'Allow more work, use fewer cards, or narrow the choices.',
  shown: byProgram({ work: 20000000 }),
});
