import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpCard = defineMessage({
  code: 'set-up-card',
  severity: 'error',
  words: () => 'This is not a card.',
  remedy: () => 'Write cards such as 10C, 10♣, "ten of clubs", or a name in quotes.',
  shown: onReading(noteOf({ setUp: '- packet: 2C ⟦11C⟧ 3C, face down' }), { word: '11c', near: ['10C'] }),
});
