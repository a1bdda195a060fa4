import { defineBlank, type Blank, type BlankReading } from '../blank.ts';
import type { Token } from '../tokens.ts';
import type { Amount, Block, Names } from '../values.ts';
import { AMOUNT_SAMPLES, printCards, readAmount, readCards } from './amount.ts';
import { printNumber } from './number.ts';

type End = Block['end'];

/** `top 3 cards`, `top 2`, `top card`, `top half`, `any number of cards from the top`. */
function readEnd(tokens: readonly Token[], at: number, names: Names, end: End): BlankReading<Amount>[] {
  const word = (i: number): string => tokens[i]?.text ?? '';
  const readings: BlankReading<Amount>[] = [];
  if (word(at) === end) {
    if (word(at + 1) === 'card') readings.push({ value: { of: 'exactly', n: 1 }, next: at + 2 });
    for (const { value, next } of readAmount(tokens, at + 1, names)) {
      if (word(next) === 'card' || word(next) === 'cards') readings.push({ value, next: next + 1 });
      readings.push({ value, next });
    }
  }
  // Cards of which nobody says where they are come off the top.
  for (const { value, next } of readCards(tokens, at, names)) {
    if (end === 'top' && word(at) !== 'card') readings.push({ value, next });
    if ((word(next) === 'from' || word(next) === 'off' || word(next) === 'at') && word(next + 1) === end)
      readings.unshift({ value, next: next + 2 });
  }
  return readings;
}

function printEnd(cards: Amount, end: End): string {
  if (cards.of === 'half') return `the ${end} half`;
  if (cards.of !== 'exactly') return `${printCards(cards)} from the ${end}`;
  return cards.n === 1 ? `the ${end} card` : `the ${end} ${printNumber(cards.n)} cards`;
}

/** Cards from the top on: an amount that speaks of where they are. */
export const topcards = defineBlank<Amount>({
  type: 'topcards',
  what: 'cards from the top: "the top 3 cards", "any number of cards from the top"',
  read: (tokens, at, names) => readEnd(tokens, at, names, 'top'),
  print: (cards) => printEnd(cards, 'top'),
  samples: AMOUNT_SAMPLES,
});

/** Cards at either end. */
export const block = defineBlank<Block>({
  type: 'block',
  what: 'cards at one end: "the top 3 cards", "the bottom card", "any number of cards from the top"',
  read: (tokens, at, names) =>
    (['top', 'bottom'] as const).flatMap((end) =>
      readEnd(tokens, at, names, end).map(({ value, next }) => ({ value: { end, cards: value }, next })),
    ),
  print: ({ end, cards }) => printEnd(cards, end),
  samples: [
    ...AMOUNT_SAMPLES.map((cards): Block => ({ end: 'top', cards })),
    { end: 'bottom', cards: { of: 'exactly', n: 1 } },
    { end: 'bottom', cards: { of: 'exactly', n: 3 } },
    { end: 'bottom', cards: { of: 'any' } },
    { end: 'bottom', cards: { of: 'half' } },
  ],
});

const SEVERAL: readonly Amount[] = [
  { of: 'exactly', n: 2 },
  { of: 'exactly', n: 8 },
  { of: 'exactly', n: { var: 'n' } },
  { of: 'half' },
];

/** A stated number of cards at an end, for sentences in which one card has a phrasing of its own. */
function several(type: string, end: End): Blank {
  return defineBlank<Amount>({
    type,
    what: `several cards at the ${end}: "the ${end} 3 cards", "the ${end} half"`,
    read: (tokens, at, names) =>
      tokens[at]?.text === end
        ? readEnd(tokens, at, names, end).filter(
            ({ value }) => (value.of === 'exactly' && value.n !== 1) || value.of === 'half',
          )
        : [],
    print: (cards) => printEnd(cards, end),
    samples: SEVERAL,
  });
}

export const severalTop = several('severaltop', 'top');
export const severalBottom = several('severalbottom', 'bottom');
