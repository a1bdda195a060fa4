import { defineBlank, type BlankReading } from '../blank.ts';
import type { Amount } from '../values.ts';
import { printAmount, readAmount } from './amount.ts';

/** A number of cards that a claim states: `exactly 4`, `at least 3`, `an even number of`, `half of the`. */
export const howMany = defineBlank<Amount>({
  type: 'howmany',
  what: 'how many: "exactly 4", "at least 3", "5 to 10", "an even number of", "half of the"',
  read: (tokens, at, names) =>
    readAmount(tokens, at, names).flatMap((reading): BlankReading<Amount>[] => {
      // `Any number` states nothing.
      if (reading.value.of === 'any') return [];
      const skipped = tokens[reading.next]?.text === 'of' ? [{ ...reading, next: reading.next + 1 }] : [];
      return [...skipped, reading];
    }),
  print: (value) => {
    if (value.of === 'exactly') return `exactly ${printAmount(value)}`;
    if (value.of === 'half') return 'exactly half of the';
    return value.of === 'multiple' ? `${printAmount(value)} of` : printAmount(value);
  },
  samples: [
    { of: 'exactly', n: 0 },
    { of: 'exactly', n: 4 },
    { of: 'exactly', n: { var: 'n' } },
    { of: 'at least', n: 3 },
    { of: 'at least', n: 1 },
    { of: 'at most', n: 2 },
    { of: 'range', from: 2, to: 3 },
    { of: 'multiple', k: 2, plus: 0 },
    { of: 'multiple', k: 2, plus: 1 },
    { of: 'multiple', k: 3, plus: 0 },
    { of: 'half' },
  ],
});
