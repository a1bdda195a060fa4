import { byProgram, defineMessage, listed } from './message.ts';

export const choicesLeft = defineMessage({
  code: 'choices-left',
  severity: 'error',
  words: (facts) =>
    `The performance was over before all its choices were made; left over: ${listed(facts.left)}.`,
  remedy: () => 'Leave them out.',
  shown: byProgram({ left: ['3', 'stop'] }),
});
