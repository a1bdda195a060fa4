import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpJoint = defineMessage({
  code: 'set-up-joint',
  severity: 'error',
  words: () => 'This is not expected here.',
  remedy: () => 'Put a comma between runs, and "face down" or "face up" after each.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs ⟦violet⟧' }), { word: 'violet', near: [] }),
});
