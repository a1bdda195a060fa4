import { byProgram, defineMessage } from './message.ts';

export const aboutNothing = defineMessage({
  code: 'about-nothing',
  severity: 'error',
  words: () => 'The sentence speaks of no card at all.',
  remedy: () => 'Speak of cards that the set-up has.',
  shown: byProgram(),
});
