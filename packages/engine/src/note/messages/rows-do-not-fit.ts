import { counted, defineMessage, noteOf, onPerforming, pileOf, text } from './message.ts';

export const rowsDoNotFit = defineMessage({
  code: 'rows-do-not-fit',
  severity: 'error',
  words: (facts) =>
    `${pileOf(facts.pile)} has ${counted(facts.size, 'card')}, which do not fill ${text(facts.rows)} rows of ${text(facts.columns)}.`,
  remedy: () => 'Choose numbers whose product is the number of cards.',
  shown: onPerforming(noteOf({ working: '1. ⟦Lay out the packet in 3 rows of 3⟧.' }), {
    pile: 'packet',
    size: 8,
    rows: 3,
    columns: 3,
  }),
});
