import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpAny = defineMessage({
  code: 'set-up-any',
  severity: 'error',
  words: () => '"any" must be followed by how many cards of what kind.',
  remedy: () => 'Write such as "any 8 red cards".',
  shown: onReading(noteOf({ setUp: '- packet: any ⟦violets⟧, face down' }), { word: 'violets', near: [] }),
});
