import { MOST_LINE } from '../setup-tokens.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpLineLong = defineMessage({
  code: 'set-up-line-long',
  severity: 'error',
  words: (facts) =>
    `A line of ${text(facts.length)} characters is not read; at most ${text(facts.most)} are.`,
  remedy: () => 'Shorten it, such as by "A-K of spades" for thirteen cards.',
  shown: onReading(noteOf({ setUp: `- ⟦packet: ${'AC '.repeat(MOST_LINE / 3)}2C⟧` }), {
    length: 3 * Math.floor(MOST_LINE / 3) + 10,
    most: MOST_LINE,
  }),
});
