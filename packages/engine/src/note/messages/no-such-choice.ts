import { byProgram, defineMessage, listed, text } from './message.ts';

export const noSuchChoice = defineMessage({
  code: 'no-such-choice',
  severity: 'error',
  words: (facts) =>
    `Choice ${text(facts.position)}, "${text(facts.choice)}", is none of those at step ${text(facts.step)}.`,
  remedy: (facts) => `Choose one of ${listed(facts.known)}.`,
  shown: byProgram({ choice: '9', position: 1, step: '1', known: ['0', '1', '2'] }),
});
