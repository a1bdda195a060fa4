import { counted, defineMessage, noteOf, onPerforming, text } from './message.ts';

export const countEndsInTail = defineMessage({
  code: 'count-ends-in-tail',
  severity: 'error',
  words: (facts) =>
    `A count of ${text(facts.count)} ends in the tail, which has ${counted(facts.tail, 'card')}.`,
  remedy: () => 'Have every number larger than the tail.',
  shown: onPerforming(
    noteOf({
      setUp: '- tail: A-4 of clubs, face down\n- ring: A-8 of hearts, face down',
      working:
        '1. The spectator names a number from 3 to 6, call it N.\n2. ⟦Count N from the foot of the tail into the ring and back round the ring, call the card reached chosen⟧.',
    }),
    { tail: 4, count: 3 },
  ),
});
