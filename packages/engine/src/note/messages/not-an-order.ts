import { defineMessage, noteOf, onReading, text } from './message.ts';

export const notAnOrder = defineMessage({
  code: 'not-an-order',
  severity: 'error',
  words: (facts) => `The order must name each of the ${text(facts.heaps)} heaps once.`,
  remedy: () => 'Write an order such as "2, 3, 1".',
  shown: onReading(
    noteOf({
      working: '1. ⟦Cut the packet into 3 heaps and reassemble them in the order 2, 3, 3 from the top⟧.',
    }),
    { heaps: 3 },
  ),
});
