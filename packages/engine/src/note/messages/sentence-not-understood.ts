import { defineMessage, noteOf, onReading, orNear, text } from './message.ts';

export const sentenceNotUnderstood = defineMessage({
  code: 'sentence-not-understood',
  severity: 'error',
  words: (facts) =>
    `This sentence is not understood${facts.word === undefined ? '' : ` from "${text(facts.word)}" on`}.`,
  remedy: (facts) => orNear(facts, 'See the list of moves and forms of ending for what is understood.'),
  shown: onReading(noteOf({ working: '1. ⟦Juggle⟧.' }), { sentence: 'Juggle', nearest: [] }),
});
