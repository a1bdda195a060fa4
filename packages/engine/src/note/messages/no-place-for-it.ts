import { counted, defineMessage, noteOf, onPerforming, pileOf } from './message.ts';

export const noPlaceForIt = defineMessage({
  code: 'no-place-for-it',
  severity: 'error',
  words: (facts) =>
    `${pileOf(facts.pile)} has ${counted(facts.size, 'card')}, and there is no such place in it.`,
  remedy: () => 'Say a place that there is, or let it go anywhere.',
  shown: onPerforming(noteOf({ working: '1. ⟦Bury the top card under 9 cards⟧.' }), {
    pile: 'packet',
    size: 8,
  }),
});
