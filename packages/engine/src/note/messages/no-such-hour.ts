import { defineMessage, noteOf, onReading, text } from './message.ts';

export const noSuchHour = defineMessage({
  code: 'no-such-hour',
  severity: 'error',
  words: (facts) =>
    facts.hour === undefined
      ? 'A clock has the hours 1 to 12.'
      : `There is no hour ${text(facts.hour)} on a clock.`,
  remedy: () => 'Write an hour from 1 to 12.',
  shown: onReading(
    noteOf({
      setUp: '- packet: A-K of clubs, face down',
      working: '1. ⟦Lay the packet out as a clock, clockwise from 13⟧.',
    }),
  ),
});
