import { MOST_NESTING } from '../limits.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

export const tooDeep = defineMessage({
  code: 'too-deep',
  severity: 'error',
  words: (facts) => `More than ${text(facts.most)} blocks inside one another are not read.`,
  remedy: () => 'Write the inner steps one after another.',
  shown: onReading(noteOf({ working: `1. ${'twice: '.repeat(MOST_NESTING)}⟦twice⟧: cut the packet.` }), {
    most: MOST_NESTING,
  }),
});
