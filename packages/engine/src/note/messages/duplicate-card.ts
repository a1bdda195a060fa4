import { defineMessage, noteOf, onReading, text } from './message.ts';

export const duplicateCard = defineMessage({
  code: 'duplicate-card',
  severity: 'error',
  words: (facts) => `${text(facts.card)} is laid out ${text(facts.times)} times, but a pack has it once.`,
  remedy: () => 'Write "from two packs" if more than one pack is used, or another card.',
  shown: onReading(noteOf({ setUp: '- packet: AC 2C ⟦AC⟧, face down' }), {
    card: 'AC',
    times: 2,
    packs: 1,
    pile: 'packet',
  }),
});
