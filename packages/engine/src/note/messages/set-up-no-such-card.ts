import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpNoSuchCard = defineMessage({
  code: 'set-up-no-such-card',
  severity: 'error',
  words: (facts) => `The pack has no ${text(facts.kind)}.`,
  remedy: () => 'Write cards that the pack has.',
  shown: onReading(noteOf({ setUp: '- packet: ⟦4 red clubs⟧, face down' }), { kind: 'red clubs' }),
});
