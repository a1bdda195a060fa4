import { defineMessage, noteOf, onReading, pileOf } from './message.ts';

export const setUpFacesInOrder = defineMessage({
  code: 'set-up-faces-in-order',
  severity: 'error',
  words: (facts) =>
    `All these cards of ${pileOf(facts.pile)} may lie in any order, but only some of them may face either way.`,
  remedy: () => 'Let all of them face either way or none, or keep their runs apart.',
  shown: onReading(
    noteOf({
      setUp:
        '- ⟦packet: any 4 red cards face up or down, then any 4 black cards face down, all in any order⟧',
    }),
    { pile: 'packet' },
  ),
});
