import { defineMessage, noteOf, onReading, text } from './message.ts';

export const notANumber = defineMessage({
  code: 'not-a-number',
  severity: 'error',
  words: (facts) =>
    `The ${text(facts.attribute)} of ${text(facts.card)} is not a number, so it cannot be added.`,
  remedy: () => 'Give every card a number, or add something else.',
  shown: onReading(
    noteOf({ setUp: '- packet: A-4 of clubs, "lamp", face down', ending: '- ⟦The packet totals 10⟧.' }),
    { attribute: 'value', card: 'lamp' },
  ),
});
