import { byProgram, defineMessage } from './message.ts';

export const setUpNotEquations = defineMessage({
  code: 'set-up-not-equations',
  severity: 'error',
  words: () =>
    'What the start must be like cannot be told: a sentence is no equation, or the working looks at cards.',
  remedy: () => 'Lay the cards out and prove the note with them.',
  shown: byProgram(),
});
