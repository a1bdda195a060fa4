import { defineMessage, haveInstead, noteOf, onReading, text } from './message.ts';

export const unknownPile = defineMessage({
  code: 'unknown-pile',
  severity: 'error',
  words: (facts) => `There is no pile "${text(facts.pile)}" by now.`,
  remedy: (facts) => haveInstead(facts, 'Make the pile first, or write the name of one that is there.'),
  shown: onReading(noteOf({ working: '1. Cut the ⟦pack⟧.' }), { pile: 'pack', known: ['packet'] }),
});
