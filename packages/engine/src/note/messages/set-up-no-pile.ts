import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpNoPile = defineMessage({
  code: 'set-up-no-pile',
  severity: 'error',
  words: () => 'The line does not begin with the name of a pile.',
  remedy: () => 'Write the name and a colon first, such as "packet:".',
  shown: onReading(noteOf({ setUp: '- ⟦A-8 of clubs, face down⟧' })),
});
