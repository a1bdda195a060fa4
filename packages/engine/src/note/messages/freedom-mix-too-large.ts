import { byProgram, defineMessage } from './message.ts';

export const freedomMixTooLarge = defineMessage({
  code: 'freedom-mix-too-large',
  severity: 'error',
  words: () => 'The mix has more choices than were looked at.',
  remedy: () => 'Try a mix with fewer choices, or fewer cards.',
  shown: byProgram(),
});
