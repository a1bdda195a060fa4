import { defineMessage, noteOf, onReading, text } from './message.ts';

export const headKey = defineMessage({
  code: 'head-key',
  severity: 'warning',
  words: (facts) =>
    `The head has a key "${text(facts.key)}", which is not read; it is nearly "${text(facts.near)}".`,
  remedy: (facts) => `Write "${text(facts.near)}", or leave it if it is a key of your own.`,
  shown: onReading(noteOf({ head: '---\n⟦minuets⟧: 4\n---\n' }), { key: 'minuets', near: 'minutes' }),
});
