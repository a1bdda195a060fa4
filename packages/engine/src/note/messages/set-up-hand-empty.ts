import { byProgram, defineMessage } from './message.ts';

export const setUpHandEmpty = defineMessage({
  code: 'set-up-hand-empty',
  severity: 'error',
  words: () => 'No cards were named.',
  remedy: () => 'Write them as a set-up does: "full pack", "A-8 of hearts, A-8 of spades", "2S 9H 4C".',
  shown: byProgram(),
});
