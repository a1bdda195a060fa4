import { byProgram, defineMessage } from './message.ts';

export const setUpNotFound = defineMessage({
  code: 'set-up-not-found',
  severity: 'error',
  words: () => 'No set-up was found within what may be spent, which does not mean that there is none.',
  remedy: () => 'Offer fewer cards, or lay some of them out yourself.',
  shown: byProgram(),
});
