import { counted, defineMessage, noteOf, onPerforming, pileOf } from './message.ts';

export const tooManyToWeave = defineMessage({
  code: 'too-many-to-weave',
  severity: 'error',
  words: (facts) =>
    `${pileOf(facts.pile)} has ${counted(facts.size, 'card')}; at most half of them can be woven into the rest.`,
  remedy: () => 'Ask for fewer cards.',
  shown: onPerforming(noteOf({ working: '1. ⟦In-faro the top 6 cards into the rest⟧.' }), {
    pile: 'packet',
    size: 8,
  }),
});
