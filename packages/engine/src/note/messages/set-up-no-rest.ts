import { defineMessage, noteOf, onReading } from './message.ts';

export const setUpNoRest = defineMessage({
  code: 'set-up-no-rest',
  severity: 'error',
  words: () => 'No cards are left for "the rest".',
  remedy: () => 'Leave it out, or lay out fewer cards before it.',
  shown: onReading(
    noteOf({ setUp: '- packet: full pack in any order, face down\n- table: ⟦the rest⟧, face down' }),
    { kind: 'cards' },
  ),
});
