import { MOST_TOLD } from '../limits.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

export const andMore = defineMessage({
  code: 'and-more',
  severity: 'error',
  words: (facts) => `And ${text(facts.more)} more of this kind further down.`,
  remedy: () => 'Mend the first ones and look again.',
  shown: onReading(noteOf({ working: `${'1. Juggle.\n'.repeat(MOST_TOLD)}1. ⟦Juggle⟧.\n1. Juggle.` }), {
    more: 2,
    what: 'error',
  }),
});
