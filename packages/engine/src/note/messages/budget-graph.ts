import { byProgram, defineMessage, text } from './message.ts';

export const budgetGraph = defineMessage({
  code: 'budget-graph',
  severity: 'error',
  words: (facts) => `The working has more moments than were looked at (${text(facts.work)} units of work).`,
  remedy: () => 'Allow more work, use fewer cards, or narrow the choices.',
  shown: byProgram({ work: 20000000 }),
});
