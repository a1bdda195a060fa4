import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpFacesInOrder = defineMessage({
  code: 'set-up-faces-in-order',
  severity: 'error',
  words: (facts) =>
    `Cards of ${text(facts.pile)} in any order, some face up and some face down: it is not clear whether faces travel with the cards.`,
  remedy: () => 'Say the facing of each run, or of all.',
  shown: onReading(
    noteOf({
      setUp:
        '- ⟦packet: any 4 red cards face up or down, then any 4 black cards face down, all in any order⟧',
    }),
    { pile: 'packet' },
  ),
});
