import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpOrderSize = defineMessage({
  code: 'set-up-order-size',
  severity: 'error',
  words: (facts) =>
    `${text(facts.count)} cards cannot lie in the order "${text(facts.order)}", which has 52.`,
  remedy: () => 'Write a smaller number.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦60 cards in Eight Kings order⟧, face down' }), {
    order: 'Eight Kings',
    count: 60,
  }),
});
