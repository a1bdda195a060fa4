import { counted, defineMessage, noteOf, onJudging, text } from './message.ts';

export const oneOfEachSize = defineMessage({
  code: 'one-of-each-size',
  severity: 'error',
  words: (facts) =>
    `A block of ${text(facts.size)} cannot have exactly one card for each of ${counted(facts.kinds, 'kind')}.`,
  remedy: () => 'Make the blocks as large as there are kinds.',
  shown: onJudging(noteOf({ ending: '- ⟦Every block of 3 has one of each suit⟧.' }), { size: 3, kinds: 1 }),
});
