import { byProgram, defineMessage } from './message.ts';

export const budgetTrials = defineMessage({
  code: 'budget-trials',
  severity: 'error',
  words: () => 'The trials ended before there were enough of them.',
  remedy: () => 'Allow more work.',
  shown: byProgram(),
});
