import { counted, defineMessage, noteOf, onPerforming, pileOf } from './message.ts';

export const noDeeperCut = defineMessage({
  code: 'no-deeper-cut',
  severity: 'error',
  words: (facts) =>
    `${pileOf(facts.pile)} has ${counted(facts.size, 'card')}, too few for a second cut deeper than the first.`,
  remedy: () => 'Have the first packet smaller.',
  shown: onPerforming(
    noteOf({
      working: '1. ⟦Turn over the top 8 cards and, cutting deeper, any number of cards from the top⟧.',
    }),
    { pile: 'packet', size: 8 },
  ),
});
