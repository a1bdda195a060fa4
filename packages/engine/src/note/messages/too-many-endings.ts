import { MOST_ENDINGS } from '../limits.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

export const tooManyEndings = defineMessage({
  code: 'too-many-endings',
  severity: 'error',
  words: (facts) => `Only the first ${text(facts.most)} sentences of the ending are read.`,
  remedy: () => 'Keep the sentences that matter.',
  shown: onReading(
    noteOf({ ending: `${'- All cards are face down.\n'.repeat(MOST_ENDINGS)}- ⟦All cards are face down⟧.` }),
    { most: MOST_ENDINGS },
  ),
});
