import { defineMessage, noteOf, onReading } from './message.ts';

export const headTooDeep = defineMessage({
  code: 'head-too-deep',
  severity: 'error',
  words: () => 'The head has too many lists or brackets inside one another to be read.',
  remedy: () => 'Write the head as plain lines, one key a line.',
  shown: onReading(noteOf({ head: '---\n⟦a: [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[\n⟧---\n' })),
});
