import { defineMessage, noteOf, onReading, text } from './message.ts';

const SAID: Readonly<Record<string, string>> = {
  facing: 'facing',
  ends: 'turning end for end',
  order: 'order',
};

export const setUpReach = defineMessage({
  code: 'set-up-reach',
  severity: 'reading',
  words: (facts) =>
    `The ${SAID[text(facts.what)] ?? 'setting'} is taken to be that of the ${text(facts.runs)} runs before it.`,
  remedy: () => 'Put it after each run if it is that of the last one only.',
  shown: onReading(noteOf({ setUp: '- packet: A-4 of clubs, then 5-8 of hearts, ⟦face down⟧' }), {
    what: 'facing',
    runs: 1,
    parts: 2,
  }),
});
