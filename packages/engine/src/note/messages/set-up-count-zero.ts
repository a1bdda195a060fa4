import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpCountZero = defineMessage({
  code: 'set-up-count-zero',
  severity: 'error',
  words: () => 'A run of no cards says nothing.',
  remedy: () => 'Write a number from 1 on, or leave the run out.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦0 red cards⟧, 4C, face down' })),
});
