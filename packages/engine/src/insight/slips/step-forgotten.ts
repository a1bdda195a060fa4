import type { SlipInstead } from './slip.ts';

export const stepForgotten: SlipInstead = {
  id: 'step-forgotten',
  title: 'the step forgotten',
  help: 'The step is left out and the next one follows at once.',
  when: 'instead',
  whole: true,
  ways({ step, move, option }) {
    const { numbers = [], marks = [] } = move.brings?.(step.args) ?? {};
    // What is named or noted in a step is missed at once when it is asked for.
    if (numbers.length > 0 || marks.length > 0 || move.hands === 'choose') return [];
    return option.actions.length === 0
      ? []
      : [{ key: 'forgotten', words: 'the step is forgotten', actions: [] }];
  },
  examples: [
    {
      before: '1 2 3',
      sentence: 'Deal the packet into a pile.',
      choices: [],
      slip: ['forgotten'],
      after: '1 2 3',
    },
  ],
};
