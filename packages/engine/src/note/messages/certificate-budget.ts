import { byProgram, defineMessage, text } from './message.ts';

export const certificateBudget = defineMessage({
  code: 'certificate-budget',
  severity: 'error',
  words: (facts) => `The check took more work than is allowed (${text(facts.work)} units).`,
  remedy: () => 'Allow more work, or ask whoever made it for a smaller proof.',
  shown: byProgram({ work: 1000000000 }),
});
