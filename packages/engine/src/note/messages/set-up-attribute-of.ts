import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpAttributeOf = defineMessage({
  code: 'set-up-attribute-of',
  severity: 'error',
  words: () => 'This does not say which cards are so.',
  remedy: () => 'Write cards, kinds or quoted names: hearts, diamonds, "lamp".',
  shown: onReading(noteOf({ setUp: '- packet: A-8 of clubs, face down\n- warm: hearts, ⟦violets⟧' }), {
    word: 'violets',
    near: [],
  }),
});
