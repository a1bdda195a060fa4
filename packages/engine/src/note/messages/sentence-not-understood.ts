import { defineMessage, noteOf, onReading, orNear, text } from './message.ts';

export const sentenceNotUnderstood = defineMessage({
  code: 'sentence-not-understood',
  severity: 'error',
  words: (facts) =>
    `This sentence is not understood${facts.word === undefined ? '' : ` from "${text(facts.word)}" on`}.`,
  remedy: (facts) => orNear(facts, 'See the list of moves and forms of ending for what is understood.'),
  shown: onReading(noteOf({ working: '1. ⟦Trun the packet over⟧.' }), {
    sentence: 'Trun the packet over',
    nearest: ['Turn the packet over', 'Cut the packet at 3', 'Turn the packet over sideways'],
  }),
});
