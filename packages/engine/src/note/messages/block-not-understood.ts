import { defineMessage, noteOf, onReading, orNear, text } from './message.ts';

export const blockNotUnderstood = defineMessage({
  code: 'block-not-understood',
  severity: 'error',
  words: (facts) => `"${text(facts.sentence)}" does not begin a block that is known.`,
  remedy: (facts) =>
    orNear(
      facts,
      'Begin with "Any number of times:", "3 times:", "Either:", "For each pile:" or "If N is even:".',
    ),
  shown: onReading(noteOf({ working: '1. ⟦Any nmber of times⟧:\n   1. Cut the packet.' }), {
    sentence: 'Any nmber of times',
    nearest: ['Any number of times'],
  }),
});
