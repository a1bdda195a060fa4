import { byProgram, defineMessage, text } from './message.ts';

export const chanceEstimate = defineMessage({
  code: 'chance-estimate',
  severity: 'error',
  words: (facts) =>
    `The chance was only estimated: from ${text(facts.low)} to ${text(facts.high)}, by ${text(facts.runs)} random performances (seed ${text(facts.seed)}).`,
  remedy: () => 'Allow more work, so that every way can be followed.',
  shown: byProgram({ low: '0.71', high: '0.75', runs: 2000, seed: 1 }),
});
