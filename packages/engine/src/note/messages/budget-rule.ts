import { byProgram, defineMessage } from './message.ts';

export const budgetRule = defineMessage({
  code: 'budget-rule',
  severity: 'error',
  words: () => 'The search for what the performer should choose ended before one was found.',
  remedy: () => 'Allow more work, or give the performer fewer choices.',
  shown: byProgram(),
});
