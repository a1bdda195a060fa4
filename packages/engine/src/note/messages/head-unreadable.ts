import { defineMessage, noteOf, onReading, text } from './message.ts';

export const headUnreadable = defineMessage({
  code: 'head-unreadable',
  severity: 'error',
  words: (facts) => `The head cannot be read${facts.reason === '' ? '' : `: ${text(facts.reason)}`}.`,
  remedy: () =>
    'Write one key a line, such as "minutes: 4", and put a value with a colon or a bracket in quotes.',
  shown: onReading(noteOf({ head: '---\ntitle: ⟦L⟧amps: a tale\n---\n' }), {
    reason: 'two colons in one line',
  }),
});
