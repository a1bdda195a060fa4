import { defineMessage, noteOf, onReading, text } from './message.ts';

export const eachInEach = defineMessage({
  code: 'each-in-each',
  severity: 'error',
  words: (facts) =>
    `This block stands inside another "For each ${text(facts.stem)}", so "that ${text(facts.stem)}" could be either.`,
  remedy: () => 'Do one after the other.',
  shown: onReading(
    noteOf({
      working:
        '1. Deal the packet into 2 piles.\n2. For each pile:\n   1. ⟦For each pile⟧:\n      1. Turn that pile over.\n3. Gather the piles left on right.',
    }),
    { stem: 'pile' },
  ),
});
