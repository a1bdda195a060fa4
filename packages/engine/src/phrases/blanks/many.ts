import { defineBlank, type BlankReading } from '../blank.ts';
import type { Amount } from '../values.ts';
import { printAmount, readAmount } from './amount.ts';

/** How many of something that the phrase itself calls by its noun: `4` piles, `any number of` pairs. */
export const many = defineBlank<Amount>({
  type: 'many',
  what: 'how many: "4", "2 to 4", "any number of"',
  read: (tokens, at, names) =>
    readAmount(tokens, at, names).flatMap((reading): BlankReading<Amount>[] => {
      const open = reading.value.of === 'any' || reading.value.of === 'multiple';
      if (!open || tokens[reading.next]?.text !== 'of') return [reading];
      return [{ ...reading, next: reading.next + 1 }];
    }),
  print: (value) =>
    value.of === 'any' || value.of === 'multiple' ? `${printAmount(value)} of` : printAmount(value),
  samples: [
    { of: 'any' },
    { of: 'exactly', n: 3 },
    { of: 'exactly', n: { var: 'k' } },
    { of: 'range', from: 2, to: 4 },
    { of: 'at least', n: 2 },
    { of: 'multiple', k: 2, plus: 0 },
  ],
});
