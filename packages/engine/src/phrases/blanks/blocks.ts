import { defineBlank, type BlankReading } from '../blank.ts';
import type { Amount } from '../values.ts';
import { printAmount, printCards, readAmount, readCards } from './amount.ts';

const PAIR: Amount = { of: 'exactly', n: 2 };

/** Sizes of blocks that follow one another: `pairs`, `blocks of 4`, `an even number of cards at a time`. */
export const blocks = defineBlank<Amount>({
  type: 'blocks',
  what: 'blocks: "pairs", "blocks of 4", "an even number of cards at a time"',
  read: (tokens, at, names) => {
    const word = (i: number): string => tokens[i]?.text ?? '';
    if (word(at) === 'pairs') return [{ value: PAIR, next: at + 1 }];
    const readings: BlankReading<Amount>[] = [];
    if ((word(at) === 'blocks' || word(at) === 'groups' || word(at) === 'packets') && word(at + 1) === 'of')
      for (const reading of readAmount(tokens, at + 2, names)) readings.push(reading);
    for (const { value, next } of readCards(tokens, at, names))
      if (word(next) === 'at' && word(next + 1) === 'time') readings.push({ value, next: next + 2 });
    return readings;
  },
  print: (value) => {
    if (value.of === 'exactly' && value.n === 2) return 'pairs';
    return value.of === 'exactly' ? `blocks of ${printAmount(value)}` : `${printCards(value)} at a time`;
  },
  samples: [
    PAIR,
    { of: 'exactly', n: 4 },
    { of: 'exactly', n: 3 },
    { of: 'exactly', n: { var: 'n' } },
    { of: 'multiple', k: 2, plus: 0 },
    { of: 'any' },
    { of: 'range', from: 2, to: 4 },
  ],
});
