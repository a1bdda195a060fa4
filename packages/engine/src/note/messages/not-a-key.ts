import { defineMessage, listed, noteOf, onReading } from './message.ts';

export const notAKey = defineMessage({
  code: 'not-a-key',
  severity: 'error',
  words: (facts) => `${listed(facts.words)} are no key: two rows would not tell a pair.`,
  remedy: () =>
    'Take words of one length in which every letter stands twice, and no two letters in the same two rows.',
  shown: onReading(
    noteOf({
      setUp: '- packet: 6 cards, face down',
      working: '1. ⟦Lay out the packet by the words "ant" and "tan"⟧.',
    }),
    {
      words: ['ant', 'tan'],
    },
  ),
});
