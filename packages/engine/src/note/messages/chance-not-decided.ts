import { defineMessage, noteOf, onReading } from './message.ts';

export const chanceNotDecided = defineMessage({
  code: 'chance-not-decided',
  severity: 'error',
  words: () => 'Chances are not decided yet, so this sentence cannot be proved or refuted.',
  remedy: () => 'Leave out the chance, or put the sentence under another heading.',
  shown: onReading(noteOf({ ending: '- ⟦With probability at least 0.8⟧, the top card is face down.' })),
});
