import { defineMessage, haveInstead, named, noteOf, onReading } from './message.ts';

export const numberNotNamed = defineMessage({
  code: 'number-not-named',
  severity: 'error',
  words: (facts) => `No number ${named(facts.name)} has been named by now.`,
  remedy: (facts) =>
    haveInstead(
      facts,
      `Name it first: "The spectator names a number from 1 to 10, call it ${named(facts.name)}."`,
    ),
  shown: onReading(noteOf({ working: '1. Cut the packet at ⟦N⟧.' }), { name: 'n', known: [] }),
});
