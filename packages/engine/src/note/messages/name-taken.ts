import { defineMessage, noteOf, onReading, text } from './message.ts';

export const nameTaken = defineMessage({
  code: 'name-taken',
  severity: 'error',
  words: (facts) => `"${text(facts.name)}" already is the name of something else.`,
  remedy: () => 'Choose another name.',
  shown: onReading(
    noteOf({
      working:
        '1. The spectator notes the top card, call it chosen.\n2. ⟦The spectator names a number from 1 to 4, call it chosen⟧.',
    }),
    { name: 'chosen' },
  ),
});
