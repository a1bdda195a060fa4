import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpOrderTaken = defineMessage({
  code: 'set-up-order-taken',
  severity: 'reading',
  words: (facts) => `The ${text(facts.word)} is taken to be: ${text(facts.taken)}.`,
  remedy: (facts) => `Confirm it, or for another write: ${text(facts.other)}.`,
  shown: onReading(noteOf({ setUp: '- packet: ⟦full pack in Eight Kings order⟧, face down' }), {
    word: 'Eight Kings order',
    taken:
      'values 8 K 3 10 2 7 9 5 Q 4 A 6 J over and over, suits in the order clubs, hearts, spades, diamonds',
    other: 'the order written out, such as A-K of hearts, K-A of spades',
  }),
});
