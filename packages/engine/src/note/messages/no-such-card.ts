import { counted, defineMessage, noteOf, onPerforming, pileOf } from './message.ts';

export const noSuchCard = defineMessage({
  code: 'no-such-card',
  severity: 'error',
  words: (facts) =>
    `${pileOf(facts.pile)} has ${counted(facts.size, 'card')}, so there is no such card in it.`,
  remedy: () => 'Name a place that there is.',
  shown: onPerforming(noteOf({ working: '1. ⟦Turn the 9th card over⟧.' }), { pile: 'packet', size: 8 }),
});
