import { byProgram, defineMessage, text } from './message.ts';

export const setUpNoneFor = defineMessage({
  code: 'set-up-none-for',
  severity: 'error',
  words: (facts) => `No packet of these cards can satisfy "${text(facts.sentence)}".`,
  remedy: () => 'Offer other cards: the sentence says which kinds it needs.',
  shown: byProgram({ sentence: 'Every pair differs in colour' }),
});
