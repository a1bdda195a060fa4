import { defineMessage, noteOf, onJudging, text } from './message.ts';

export const leftOver = defineMessage({
  code: 'left-over',
  severity: 'reading',
  words: (facts) =>
    `${text(facts.left)} cards are left over after the last block of ${text(facts.size)}; the sentence does not speak of them.`,
  remedy: () => 'Choose a size that divides the number of cards, or leave it so.',
  shown: onJudging(noteOf({ ending: '- ⟦Every block of 3 has one face-up card⟧.' }), { left: 2, size: 3 }),
});
