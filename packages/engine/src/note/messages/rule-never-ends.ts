import { byProgram, defineMessage } from './message.ts';

export const ruleNeverEnds = defineMessage({
  code: 'rule-never-ends',
  severity: 'error',
  words: () => 'The performer could only go on for ever.',
  remedy: () => 'Let the repetition have an end.',
  shown: byProgram(),
});
