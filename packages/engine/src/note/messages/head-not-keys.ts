import { defineMessage, noteOf, onReading } from './message.ts';

export const headNotKeys = defineMessage({
  code: 'head-not-keys',
  severity: 'error',
  words: () => 'The head is not made of keys and values.',
  remedy: () => 'Write one key a line, such as "title: Lighthouse keepers".',
  shown: onReading(noteOf({ head: '---\n⟦- Lighthouse keepers\n⟧---\n' })),
});
