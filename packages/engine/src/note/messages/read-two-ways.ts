import { byProgram, defineMessage, listed } from './message.ts';

export const readTwoWays = defineMessage({
  code: 'read-two-ways',
  severity: 'error',
  words: (facts) => `This sentence can be read as ${listed(facts.moves, 'or')}.`,
  remedy: () => 'Use other words, and tell us: no sentence should be read in two ways.',
  shown: byProgram({ moves: ['complete cut', 'deal'] }),
});
