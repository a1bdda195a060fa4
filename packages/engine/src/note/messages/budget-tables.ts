import { byProgram, defineMessage, text } from './message.ts';

export const budgetTables = defineMessage({
  code: 'budget-tables',
  severity: 'error',
  words: (facts) => `More tables can arise than were looked at (${text(facts.tables)}).`,
  remedy: () => 'Allow more work, use fewer cards, or narrow the choices.',
  shown: byProgram({ tables: 400000 }),
});
