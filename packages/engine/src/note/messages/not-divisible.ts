import { counted, defineMessage, noteOf, onPerforming, pileOf, text } from './message.ts';

export const notDivisible = defineMessage({
  code: 'not-divisible',
  severity: 'error',
  words: (facts) =>
    `${pileOf(facts.pile)} has ${counted(facts.size, 'card')}, which ${text(facts.by)} does not divide.`,
  remedy: () => 'Choose a number that divides it.',
  shown: onPerforming(
    noteOf({ working: '1. ⟦Cut the packet into 3 equal piles⟧.\n2. Gather the piles left on right.' }),
    { pile: 'packet', size: 8, by: 3 },
  ),
});
