import { counted, defineMessage, noteOf, onReading, text } from './message.ts';

export const setUpPatternCut = defineMessage({
  code: 'set-up-pattern-cut',
  severity: 'warning',
  words: (facts) =>
    `${text(facts.count)} is no multiple of ${text(facts.length)}: the last round has only ${counted(facts.rest, 'card')}.`,
  remedy: () => 'Choose a multiple if whole rounds are meant.',
  shown: onReading(
    noteOf({ setUp: '- packet: ⟦clubs hearts spades diamonds repeated, 10 cards⟧, face down' }),
    { count: 10, length: 4, rest: 2 },
  ),
});
