import { defineMessage, noteOf, onReading, text } from './message.ts';

const SAID: Readonly<Record<string, string>> = {
  facing: 'facing',
  ends: 'turning end for end',
  order: 'order',
};

export const setUpSaidTwice = defineMessage({
  code: 'set-up-said-twice',
  severity: 'error',
  words: (facts) => `The ${SAID[text(facts.what)] ?? 'same'} is said twice.`,
  remedy: () => 'Say it once.',
  shown: onReading(noteOf({ setUp: '- packet: A-4 of clubs face down ⟦face up⟧' }), { what: 'facing' }),
});
