import { defineMessage, noteOf, onPerforming, text } from './message.ts';

export const noLetters = defineMessage({
  code: 'no-letters',
  severity: 'error',
  words: (facts) => `The card "${text(facts.mark)}" has no name to spell.`,
  remedy: () => 'Mark a card before its name is spelled.',
  shown: onPerforming(
    noteOf({
      setUp: '- packet: "12" "34", face down',
      working:
        '1. The spectator notes the top card, call it chosen.\n2. ⟦Spell the name of the chosen card⟧.',
    }),
    { mark: 'chosen' },
  ),
});
