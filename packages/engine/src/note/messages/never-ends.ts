import { byProgram, defineMessage } from './message.ts';

export const neverEnds = defineMessage({
  code: 'never-ends',
  severity: 'error',
  words: () => 'No performance ever ends, so the sentence is never judged.',
  remedy: () => 'Let every repetition have an end.',
  shown: byProgram(),
});
