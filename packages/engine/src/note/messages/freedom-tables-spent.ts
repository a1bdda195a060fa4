import { byProgram, defineMessage, text } from './message.ts';

export const freedomTablesSpent = defineMessage({
  code: 'freedom-tables-spent',
  severity: 'error',
  words: (facts) => `More tables can arise than were looked at (${text(facts.tables)}).`,
  remedy: () => 'Allow more work, or put the mix into the note to see.',
  shown: byProgram({ tables: 400000 }),
});
