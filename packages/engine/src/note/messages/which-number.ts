import { defineMessage, listed, namesOf, noteOf, onReading } from './message.ts';

export const whichNumber = defineMessage({
  code: 'which-number',
  severity: 'error',
  words: (facts) => `Several numbers have been named: ${listed(namesOf(facts.known))}.`,
  remedy: () => 'Say which is meant, such as "If N is 3:".',
  shown: onReading(
    noteOf({
      working:
        '1. The spectator names a number from 1 to 4, call it N.\n2. The spectator names a number from 1 to 4, call it K.\n3. ⟦If they named 3⟧: cut the packet.',
    }),
    { known: ['n', 'k'] },
  ),
});
