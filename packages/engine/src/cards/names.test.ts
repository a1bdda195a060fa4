import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cardSymbols,
  cardWords,
  mateOf,
  parseCardName,
  parseRank,
  parseSuit,
  printCardName,
  RANKS,
  rankWord,
  sameCard,
  spelledLength,
  SUITS,
  valueOf,
} from './names.ts';
import { PACK } from './pack.ts';

describe('reading', () => {
  test.each([
    ['10C', '10C'],
    ['10c', '10C'],
    ['TC', '10C'],
    ['10♣', '10C'],
    ['10♧', '10C'],
    ['10♣\uFE0F', '10C'],
    ['ten of clubs', '10C'],
    ['10 of clubs', '10C'],
    ['The Ten of Clubs', '10C'],
    ['T of ♣', '10C'],
    ['AS', 'AS'],
    ['ace of spades', 'AS'],
    ['one of spades', 'AS'],
    ['knave of hearts', 'JH'],
    ['Queen Of Hearts', 'QH'],
    ['2♦', '2D'],
    ['  deuce of diamonds ', '2D'],
  ])('%s', (text, name) => {
    const card = parseCardName(text);
    expect(card === null ? null : printCardName(card)).toBe(name);
  });

  test.each([
    '',
    '1C',
    '11C',
    '10',
    'C',
    'XC',
    '10X',
    'ten clubs',
    'ten of',
    'of clubs',
    'ten of clubs of hearts',
    'lamp',
    'A'.repeat(1e6),
  ])('%.20s is no card', (text) => {
    expect(parseCardName(text)).toBeNull();
  });

  test('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const card = parseCardName(text);
        expect(card === null ? null : parseCardName(printCardName(card))).toEqual(card);
        parseRank(text);
        parseSuit(text);
      }),
    );
  });
});

test.each([
  ['letters', printCardName],
  ['symbols', cardSymbols],
  ['words', cardWords],
] as const)('all 52 names in %s read back, and differ', (_style, print) => {
  expect(PACK.map((card) => parseCardName(print(card)))).toEqual(PACK);
  expect(PACK.map((card) => parseCardName(print(card).toLowerCase()))).toEqual(PACK);
  expect(new Set(PACK.map(print)).size).toBe(52);
});

test('values run from 1 to 13', () => {
  expect(RANKS.map(valueOf)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13]);
});

// Common practice of spelling effects, no source: each number below can be counted off on the fingers.
describe('letters', () => {
  test('of the ranks, ace to king, 52 in all', () => {
    const letters = RANKS.map((rank) => spelledLength(rankWord(rank)));
    expect(letters).toEqual([3, 3, 5, 4, 4, 3, 5, 5, 4, 3, 4, 5, 4]);
    expect(letters.reduce((a, b) => a + b)).toBe(52);
  });

  test('of the suits', () => {
    expect(SUITS.map((suit) => [suit, spelledLength(suit)])).toEqual([
      ['clubs', 5],
      ['hearts', 6],
      ['spades', 6],
      ['diamonds', 8],
    ]);
  });

  test('of whole names, how many cards have each length', () => {
    const count = new Map<number, number>();
    for (const card of PACK) {
      const length = spelledLength(cardWords(card));
      count.set(length, (count.get(length) ?? 0) + 1);
    }
    expect([...count].sort(([a], [b]) => a - b)).toEqual([
      [10, 4],
      [11, 13],
      [12, 14],
      [13, 12],
      [14, 5],
      [15, 4],
    ]);
  });

  test('spaces, stops and digits are not spelled; letters of every alphabet are', () => {
    expect(spelledLength('Zoë, 3 é!')).toBe(4);
  });
});

test('mates are each other’s mates, of the same rank and colour, never the same card', () => {
  for (const card of PACK) {
    const mate = mateOf(card);
    expect(sameCard(mateOf(mate), card)).toBe(true);
    expect(sameCard(mate, card)).toBe(false);
    expect(mate.rank).toBe(card.rank);
    expect(`${card.suit} ${mate.suit}`).toMatch(
      /^(clubs spades|spades clubs|hearts diamonds|diamonds hearts)$/,
    );
  }
});
