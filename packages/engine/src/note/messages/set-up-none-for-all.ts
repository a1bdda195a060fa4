import { byProgram, defineMessage, text } from './message.ts';

export const setUpNoneForAll = defineMessage({
  code: 'set-up-none-for-all',
  severity: 'error',
  words: (facts) => `No packet of these cards satisfies all ${text(facts.sentences)} sentences at once.`,
  remedy: () => 'Offer other cards, or give up one of the sentences.',
  shown: byProgram({ sentences: 2 }),
});
