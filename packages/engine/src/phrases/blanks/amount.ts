import { defineBlank, type BlankReading } from '../blank.ts';
import type { Token } from '../tokens.ts';
import type { Amount, Names, NumberRef } from '../values.ts';
import { printNumber, readNumber } from './number.ts';

// Phrasings that leave a number open; each is printed as the first of its kind.
const OPEN: readonly { readonly words: readonly string[]; readonly amount: Amount }[] = [
  { words: ['any', 'number'], amount: { of: 'any' } },
  { words: ['any', 'place'], amount: { of: 'any' } },
  { words: ['as', 'many', 'as', 'they', 'like'], amount: { of: 'any' } },
  { words: ['any', 'even', 'number'], amount: { of: 'multiple', k: 2, plus: 0 } },
  { words: ['even', 'number'], amount: { of: 'multiple', k: 2, plus: 0 } },
  { words: ['any', 'odd', 'number'], amount: { of: 'multiple', k: 2, plus: 1 } },
  { words: ['odd', 'number'], amount: { of: 'multiple', k: 2, plus: 1 } },
  { words: ['exactly', 'half'], amount: { of: 'half' } },
  { words: ['half'], amount: { of: 'half' } },
  { words: ['some'], amount: { of: 'at least', n: 1 } },
];

/** Every amount that begins at a token. */
export function readAmount(tokens: readonly Token[], at: number, names: Names): BlankReading<Amount>[] {
  const word = (i: number): string => tokens[i]?.text ?? '';
  const readings: BlankReading<Amount>[] = [];
  for (const { words, amount } of OPEN)
    if (words.every((w, i) => word(at + i) === w)) readings.push({ value: amount, next: at + words.length });
  for (const { value, next } of readNumber(tokens, at, names))
    if (
      word(next) === 'or' &&
      (word(next + 1) === 'more' || word(next + 1) === 'fewer' || word(next + 1) === 'less')
    )
      readings.push({
        value: { of: word(next + 1) === 'more' ? 'at least' : 'at most', n: value },
        next: next + 2,
      });
  const after = (skip: number): BlankReading<NumberRef>[] => readNumber(tokens, at + skip, names);
  if (word(at) === 'multiple' && word(at + 1) === 'of')
    for (const { value, next } of after(2))
      if (typeof value === 'number' && value > 0)
        readings.push({ value: { of: 'multiple', k: value, plus: 0 }, next });
  if (word(at) === 'at' && (word(at + 1) === 'least' || word(at + 1) === 'most'))
    for (const { value, next } of after(2))
      readings.push({ value: { of: word(at + 1) === 'least' ? 'at least' : 'at most', n: value }, next });
  if ((word(at) === 'fewer' || word(at) === 'less' || word(at) === 'more') && word(at + 1) === 'than')
    for (const { value, next } of after(2))
      if (typeof value === 'number')
        readings.push({
          value: word(at) === 'more' ? { of: 'at least', n: value + 1 } : { of: 'at most', n: value - 1 },
          next,
        });
  if (word(at) === 'exactly')
    for (const { value, next } of after(1)) readings.push({ value: { of: 'exactly', n: value }, next });
  if (word(at) === 'about') {
    const open = at + 1;
    let close = open;
    while (close < tokens.length && close - open < 4 && word(close) !== '(') close++;
    const about = tokens
      .slice(open, close)
      .map((t) => t.text)
      .join(' ');
    if (word(close) === '(' && about !== '')
      for (const range of readRange(tokens, close + 1, names))
        if (word(range.next) === ')' && range.value.of === 'range')
          readings.push({ value: { ...range.value, about }, next: range.next + 1 });
  }
  readings.push(...readRange(tokens, at, names));
  for (const { value, next } of readNumber(tokens, at, names))
    readings.push({ value: { of: 'exactly', n: value }, next });
  return readings;
}

/** `5 to 10`, `from 5 to 10`, `between 5 and 10`, `5-10`; both ends belong to it. */
function readRange(tokens: readonly Token[], at: number, names: Names): BlankReading<Amount>[] {
  const word = (i: number): string => tokens[i]?.text ?? '';
  const between = word(at) === 'between';
  const start = between || word(at) === 'from' ? at + 1 : at;
  return readNumber(tokens, start, names).flatMap((low) => {
    const joined = between ? word(low.next) === 'and' : word(low.next) === 'to' || word(low.next) === '-';
    if (!joined) return [];
    return readNumber(tokens, low.next + 1, names).map((high) => ({
      value: { of: 'range' as const, from: low.value, to: high.value },
      next: high.next,
    }));
  });
}

export function printAmount(amount: Amount): string {
  switch (amount.of) {
    case 'any':
      return 'any number';
    case 'exactly':
      return printNumber(amount.n);
    case 'range': {
      const range = `${printNumber(amount.from)} to ${printNumber(amount.to)}`;
      return amount.about === undefined ? range : `about ${amount.about} (${range})`;
    }
    case 'at least':
      return amount.n === 1 ? 'some' : `at least ${printNumber(amount.n)}`;
    case 'at most':
      return `at most ${printNumber(amount.n)}`;
    case 'multiple':
      if (amount.k === 2) return amount.plus === 0 ? 'an even number' : 'an odd number';
      return `a multiple of ${amount.k}`;
    case 'half':
      return 'half';
  }
}

export const AMOUNT_SAMPLES: readonly Amount[] = [
  { of: 'any' },
  { of: 'exactly', n: 8 },
  { of: 'exactly', n: { var: 'n' } },
  { of: 'range', from: 5, to: 10 },
  { of: 'range', from: 20, to: 32, about: 'half' },
  { of: 'at least', n: 1 },
  { of: 'at least', n: 3 },
  { of: 'at most', n: 9 },
  { of: 'multiple', k: 2, plus: 0 },
  { of: 'multiple', k: 2, plus: 1 },
  { of: 'multiple', k: 3, plus: 0 },
  { of: 'half' },
];

/** A number left more or less open: `any number`, `an even number`, `5 to 10`, `8`. */
export const amount = defineBlank<Amount>({
  type: 'amount',
  what: 'how many: a number, "any number", "an even number", "5 to 10", "at least 3"',
  read: readAmount,
  print: (value) => {
    // After a word such as `at` these read better than `at least 3`.
    if (value.of === 'at least') return `${printNumber(value.n)} or more`;
    return value.of === 'at most' ? `${printNumber(value.n)} or fewer` : printAmount(value);
  },
  samples: AMOUNT_SAMPLES,
});

/** An amount with its noun: `8 cards`, `any number of cards`. */
export function printCards(value: Amount): string {
  const text = printAmount(value);
  if (value.of === 'exactly') return value.n === 1 ? '1 card' : `${text} cards`;
  if (value.of === 'half') return 'half of the cards';
  if (value.of === 'multiple' && value.k !== 2) return `${text} cards`;
  return value.of === 'any' || value.of === 'multiple' ? `${text} of cards` : `${text} cards`;
}

const COUNTED = new Set(['card', 'cards']);

export function readCards(tokens: readonly Token[], at: number, names: Names): BlankReading<Amount>[] {
  const readings: BlankReading<Amount>[] = [];
  if (tokens[at]?.text === 'card') readings.push({ value: { of: 'exactly', n: 1 }, next: at + 1 });
  for (const { value, next } of readAmount(tokens, at, names)) {
    const noun = tokens[next]?.text === 'of' ? next + 1 : next;
    if (COUNTED.has(tokens[noun]?.text ?? '')) readings.push({ value, next: noun + 1 });
  }
  return readings;
}

/** The same with its noun: `any number of cards`, `8 cards`, `the top 3 cards` is spelled by the phrase itself. */
export const cards = defineBlank<Amount>({
  type: 'cards',
  what: 'how many cards: "8 cards", "any number of cards", "an even number of cards", "5 to 10 cards"',
  read: readCards,
  print: printCards,
  samples: AMOUNT_SAMPLES,
});
