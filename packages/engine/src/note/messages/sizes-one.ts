import { byProgram, defineMessage } from './message.ts';

export const sizesOne = defineMessage({
  code: 'sizes-one',
  severity: 'error',
  words: () => 'The set-up of this note is for one number of cards only.',
  remedy: () =>
    'Write it with a number that can grow: "16 cards alternately red and black", "12 cards in any order".',
  shown: byProgram(),
});
