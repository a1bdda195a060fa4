import { byProgram, defineMessage } from './message.ts';

export const chancePerformer = defineMessage({
  code: 'chance-performer',
  severity: 'error',
  words: () =>
    'The performer has choices here, and only their chance at random was reckoned, which is too small.',
  remedy: () => 'Say what the performer does, or leave out the chance.',
  shown: byProgram(),
});
