import { defineMessage, noteOf, onReading } from './message.ts';

export const chanceNested = defineMessage({
  code: 'chance-nested',
  severity: 'error',
  words: () => 'A chance can only be asked of a whole sentence.',
  remedy: () => 'Make it a sentence of its own, with the chance at its beginning.',
  shown: onReading(
    noteOf({
      ending:
        '- If all cards are face down, then ⟦with probability at least 0.8⟧, the top card is face down.',
    }),
  ),
});
