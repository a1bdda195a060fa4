import { defineMessage, noteOf, onReading, text } from './message.ts';

export const noNumberedPiles = defineMessage({
  code: 'no-numbered-piles',
  severity: 'error',
  words: (facts) => `There are no piles "${text(facts.stem)} 1", "${text(facts.stem)} 2" and so on by now.`,
  remedy: () => 'Deal or cut into piles first.',
  shown: onReading(noteOf({ working: '1. ⟦For each pile⟧:\n   1. Turn that pile over.' }), {
    stem: 'pile',
    known: ['packet'],
  }),
});
