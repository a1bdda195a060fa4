import { defineMessage, noteOf, onReading } from './message.ts';

export const chanceNumber = defineMessage({
  code: 'chance-number',
  severity: 'error',
  words: () => 'This is no chance.',
  remedy: () =>
    'Write "With probability at least 0.8, ...", with a number from 0 to 1, or "at least 80 percent" or "at least 4 in 5".',
  shown: onReading(noteOf({ ending: '- ⟦With probability at least 8⟧, the top card is face down.' })),
});
