import { defineMessage, listed, noteOf, onReading } from './message.ts';

export const pileTwice = defineMessage({
  code: 'pile-twice',
  severity: 'error',
  words: (facts) =>
    `${facts.piles === undefined && facts.order === undefined ? 'The same pile' : listed(facts.piles ?? facts.order)} is named where two piles are needed.`,
  remedy: () => 'Name two different piles.',
  shown: onReading(
    noteOf({
      setUp: '- packet: A-8 of clubs, face down\n- table: A-4 of hearts, face down',
      working: '1. ⟦Put the packet on the packet⟧.',
    }),
  ),
});
