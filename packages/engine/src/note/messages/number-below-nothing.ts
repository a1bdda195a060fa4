import { defineMessage, noteOf, onReading, text } from './message.ts';

export const numberBelowNothing = defineMessage({
  code: 'number-below-nothing',
  severity: 'error',
  words: (facts) =>
    facts.one === undefined
      ? 'The difference is below nothing.'
      : `${text(facts.one)} less ${text(facts.other)} is below nothing.`,
  remedy: () => 'Take the smaller number from the larger.',
  shown: onReading(noteOf({ working: '1. ⟦Take 5 from 3, call the rest N⟧.' })),
});
