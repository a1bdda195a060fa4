import { defineMessage, haveInstead, noteOf, onReading, text } from './message.ts';

export const unknownMark = defineMessage({
  code: 'unknown-mark',
  severity: 'error',
  words: (facts) => `No card has been called "${text(facts.mark)}" by now.`,
  remedy: (facts) =>
    haveInstead(
      facts,
      `Mark it first, such as "The spectator notes the top card, call it ${text(facts.mark)}."`,
    ),
  shown: onReading(
    noteOf({
      working: '1. The spectator notes the top card, call it chosen.\n2. Spell the name of the ⟦chosn card⟧.',
    }),
    { mark: 'chosn', known: ['chosen'] },
  ),
});
