import { byProgram, defineMessage, text } from './message.ts';

export const chanceTooSmall = defineMessage({
  code: 'chance-too-small',
  severity: 'error',
  words: (facts) => `The chance is ${text(facts.chance)}, which is less than the sentence asks for.`,
  remedy: () => 'Ask for no more than that, or change the working.',
  shown: byProgram({ chance: '0.25' }),
});
