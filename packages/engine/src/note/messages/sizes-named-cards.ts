import { byProgram, defineMessage } from './message.ts';

export const sizesNamedCards = defineMessage({
  code: 'sizes-named-cards',
  severity: 'error',
  words: () =>
    'The set-up names its cards one by one, and they come round neither in colour nor in suit: how it would go on is not known.',
  remedy: () =>
    'Write it with a number that can grow: "16 cards alternately red and black", "A-9 of hearts".',
  shown: byProgram(),
});
