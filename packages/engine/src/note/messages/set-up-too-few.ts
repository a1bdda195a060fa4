import { byProgram, defineMessage, counted } from './message.ts';

export const setUpTooFew = defineMessage({
  code: 'set-up-too-few',
  severity: 'error',
  words: (facts) =>
    `The set-up has ${counted(facts.places, 'place')}, and there are only ${counted(facts.cards, 'card')} at hand.`,
  remedy: () => 'Take more cards, or write the routine for fewer.',
  shown: byProgram({ places: 16, cards: 12 }),
});
