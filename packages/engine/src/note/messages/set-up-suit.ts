import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpSuit = defineMessage({
  code: 'set-up-suit',
  severity: 'error',
  words: () => 'This is not a suit.',
  remedy: () => 'Write clubs, hearts, spades or diamonds.',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of ⟦violets⟧' }), { word: 'violets', near: [] }),
});
