import { defineMessage, noteOf, onJudging, text } from './message.ts';

export const leftOver = defineMessage({
  code: 'left-over',
  severity: 'reading',
  words: (facts) =>
    `Cards left over after the last block of ${text(facts.size)}: ${text(facts.left)}. The sentence does not speak of them.`,
  remedy: () => 'Choose a size that divides the number of cards, or leave it so.',
  shown: onJudging(noteOf({ ending: '- ⟦Every block of 3 has one face-up card⟧.' }), { left: 2, size: 3 }),
});
