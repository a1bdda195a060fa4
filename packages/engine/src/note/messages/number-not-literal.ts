import { defineMessage, named, noteOf, onReading } from './message.ts';

export const numberNotLiteral = defineMessage({
  code: 'number-not-literal',
  severity: 'error',
  words: (facts) =>
    `Here a number must be written out; ${named(facts.name)} stands for one that is only known in performance.`,
  remedy: () => 'Write the number.',
  shown: onReading(
    noteOf({
      working:
        '1. The spectator names a number from 1 to 4, call it N.\n2. ⟦At least N times⟧:\n   1. Cut the packet.',
    }),
    { name: 'n' },
  ),
});
