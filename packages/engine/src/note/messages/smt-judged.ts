import { byProgram, defineMessage } from './message.ts';

export const smtJudged = defineMessage({
  code: 'smt-judged',
  severity: 'error',
  words: () => 'A sentence that compares hands is not written for a solver.',
  remedy: () => 'Say what the hands are made of: which cards, how many of a kind.',
  shown: byProgram(),
});
