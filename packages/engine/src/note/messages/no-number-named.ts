import { defineMessage, noteOf, onReading } from './message.ts';

export const noNumberNamed = defineMessage({
  code: 'no-number-named',
  severity: 'error',
  words: () => 'No number has been named by now.',
  remedy: () => 'Name one first: "The spectator names a number from 1 to 10, call it N."',
  shown: onReading(noteOf({ working: '1. ⟦If the spectator names 3⟧: cut the packet.' })),
});
