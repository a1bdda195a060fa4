import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpAll = defineMessage({
  code: 'set-up-all',
  severity: 'error',
  words: (facts) => `There are ${text(facts.size)} ${text(facts.kind)}, not ${text(facts.count)}.`,
  remedy: (facts) => `Write "all ${text(facts.kind)}" or the right number.`,
  shown: onReading(noteOf({ setUp: '- packet: all ⟦12 hearts⟧, face down' }), {
    kind: 'hearts',
    count: 12,
    size: 13,
  }),
});
