import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpMoreThanAPack = defineMessage({
  code: 'set-up-more-than-a-pack',
  severity: 'warning',
  words: (facts) => `One pack has only ${text(facts.most)} ${text(facts.kind)}.`,
  remedy: () => 'Write "from two packs" if more than one pack is used.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦30 red cards⟧, face down' }), { kind: 'red cards', most: 26 }),
});
