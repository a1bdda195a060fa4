import { byProgram, defineMessage } from './message.ts';

export const chanceEndless = defineMessage({
  code: 'chance-endless',
  severity: 'error',
  words: () => 'How often a repetition goes is left open, so there is no chance to reckon.',
  remedy: () => 'Write how many times.',
  shown: byProgram(),
});
