import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpOrderSize = defineMessage({
  code: 'set-up-order-size',
  severity: 'error',
  words: (facts) => `The order "${text(facts.order)}" has another number of cards than ${text(facts.count)}.`,
  remedy: () => 'Leave the number out, or write the order card by card.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦60 cards in Eight Kings order⟧, face down' }), {
    order: 'Eight Kings',
    count: 60,
  }),
});
