import { byProgram, counted, defineMessage, text } from './message.ts';

export const setUpOtherNumber = defineMessage({
  code: 'set-up-other-number',
  severity: 'error',
  words: (facts) =>
    `The set-up has ${counted(facts.places, 'place')}, and ${counted(facts.cards, 'card')} ${facts.cards === 1 ? 'was' : 'were'} named.`,
  remedy: (facts) => `Name all ${text(facts.places)} cards as they lie, from the top.`,
  shown: byProgram({ places: 16, cards: 15 }),
});
