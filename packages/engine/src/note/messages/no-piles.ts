import { defineMessage, noteOf, onReading, text } from './message.ts';

export const noPiles = defineMessage({
  code: 'no-piles',
  severity: 'error',
  words: (facts) =>
    facts.stem === undefined
      ? 'There must be at least one pile.'
      : `There are no piles "${text(facts.stem)} 1", "${text(facts.stem)} 2" and so on.`,
  remedy: () => 'Make the piles first, or write how many.',
  shown: onReading(noteOf({ working: '1. ⟦Deal the packet into 0 piles⟧.' })),
});
