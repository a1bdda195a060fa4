import { counted, defineMessage, noteOf, onPerforming, pileOf } from './message.ts';

export const cutTooDeep = defineMessage({
  code: 'cut-too-deep',
  severity: 'error',
  words: (facts) => `${pileOf(facts.pile)} has ${counted(facts.size, 'card')}, too few for this cut.`,
  remedy: () => 'Ask for a smaller number, or say in the sentence how many the choice may be.',
  shown: onPerforming(noteOf({ working: '1. ⟦Cut the packet at 9⟧.' }), { pile: 'packet', size: 8 }),
});
