import { counted, defineMessage, noteOf, onPerforming, pileOf, text } from './message.ts';

export const notEnoughCards = defineMessage({
  code: 'not-enough-cards',
  severity: 'error',
  words: (facts) =>
    `There are not enough cards: ${pileOf(facts.pile)} has ${counted(facts.size, 'card')}${facts.wanted === undefined ? '' : ` and ${text(facts.wanted)} are needed`}.`,
  remedy: () => 'Ask for fewer cards, or say in the sentence how many the choice may be.',
  shown: onPerforming(noteOf({ working: '1. ⟦Deal 9 cards to the table⟧.' }), { pile: 'packet', size: 8 }),
});
