import { SEEN } from '../../moves/seeing.ts';
import { defineMessage, named, noteOf, onReading, text } from './message.ts';

export const usesSecret = defineMessage({
  code: 'uses-secret',
  severity: 'error',
  words: (facts) =>
    facts.name === SEEN
      ? `The performer does not get to know what was looked at in secret at step ${text(facts.step)}.`
      : `The performer does not get to know ${named(facts.name)}, which was settled at step ${text(facts.step)}.`,
  remedy: () => 'Have it said aloud there ("..., openly"), or let the spectator do this.',
  shown: onReading(
    noteOf({
      working:
        '1. The spectator thinks of a number from 1 to 4, call it N.\n2. ⟦You deal N cards to the table⟧.',
    }),
    { name: 'n', step: '1' },
  ),
});
