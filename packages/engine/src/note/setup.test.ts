import { describe, expect, test } from 'vitest';
import type { Card } from '../cards/card.ts';
import { newPackOrder, namedOrder, startingWith } from '../cards/stacks.ts';
import { printCardName } from '../cards/names.ts';
import { showPile } from '../cards/show.ts';
import { printSetUp, readSetUp, type SetUpReading } from './setup.ts';

function read(...texts: string[]): SetUpReading {
  let from = 0;
  return readSetUp(
    texts.map((text) => {
      const item = { text, from };
      from += text.length + 1;
      return item;
    }),
  );
}

function pile(reading: SetUpReading, name = 'packet'): string {
  const found = reading.setUp.piles.find((one) => one.name === name);
  return showPile((found?.cards ?? []).map(({ card, up, end }) => ({ card: reading.cards[card], up, end })));
}

function cardOf(reading: SetUpReading, name: string): Card | undefined {
  return reading.cards.find((card) => card.name === name);
}

const codes = (reading: SetUpReading) => reading.diagnostics.map(({ code }) => code);

/** Reads one pile without any complaint. */
function clean(...texts: string[]): SetUpReading {
  const reading = read(...texts);
  expect(reading.diagnostics).toEqual([]);
  return reading;
}

describe('what lies in a pile, from the top', () => {
  test.each([
    ['2S 9H 4C KD, face down', '2S 9H 4C KD'],
    ['2s, 9h and ten of clubs; The king of Diamonds', '2S 9H 10C KD'],
    ['10♣ TC', '10C 10C', ['duplicate-card']],
    ["2S 9H^ 4C^' KD'", "2S 9H^ 4C^' KD'"],
    ['2S 9H^, face up', '2S^ 9H^'],
    ['"lamp" "Rose", 2 "lamp"', '"lamp" "Rose" "lamp" "lamp"'],
    ['joker, red joker, 2 jokers', 'joker red joker joker joker'],
    ['A-4 of spades', 'AS 2S 3S 4S'],
    ['4 to ace of hearts', '4H 3H 2H AH'],
    ['jack to king of the clubs', 'JC QC KC'],
    ['2H-5H, KS–JS', '2H 3H 4H 5H KS QS JS'],
    ['a red card, an ace, a black 7', 'r1 A/2 7/b3'],
    ['4 red cards, then 4 black cards', 'r1 r2 r3 r4 b5 b6 b7 b8'],
    ['any 2 red', 'r1 r2'],
    ['seven cards', '1 2 3 4 5 6 7'],
    ['fifty-two cards', Array.from({ length: 52 }, (_, k) => k + 1).join(' ')],
    ['2 face-up hearts and 2 face-down black aces', 'h1^ h2^ A/b3 A/b4'],
    ['6 cards alternately red and black', 'r1 b2 r3 b4 r5 b6'],
    ['5 cards, alternately black and red', 'b1 r2 b3 r4 b5'],
    ['alternately red and black, 3 cards', 'r1 b2 r3'],
    ['3 alternating clubs and hearts', 'c1 h2 c3'],
    ['4 cards alternately face up and face down', '1^ 2 3^ 4'],
    ['4 cards, every second card face up', '1 2^ 3 4^'],
    ['4 cards alternately red face up and black face down', 'r1^ b2 r3^ b4'],
    ['clubs hearts spades diamonds repeated, 6 cards', 'c1 h2 s3 d4 c5 h6', ['set-up-pattern-cut']],
    ['clubs, hearts and spades in turn, 3 cards', 'c1 h2 s3'],
    ['red black repeated 2 times', 'r1 b2 r3 b4'],
    ['6 cards, red red black repeated', 'r1 r2 b3 r4 r5 b6'],
    ['red black black red', 'r1 b2 b3 r4'],
    ['"lamp" "key" repeated, 5 cards', '"lamp" "key" "lamp" "key" "lamp"', ['set-up-pattern-cut']],
    ['4 cards and their mates in mirror order', '1 2 3 4 5 6 7 8'],
    ['A-3 of spades and their mates in mirror order', 'AS 2S 3S 3C 2C AC'],
    ['AS, 6H and their mates in the same order', 'AS 6H AC 6D'],
    ['AS 6H torn in half and stacked', 'AS 6H AS 6H'],
    ['A-2 of hearts torn in two and stacked, AH', 'AH 2H AH 2H AH', ['duplicate-card']],
    ['2 red cards torn in half and stacked', 'r1 r2 r3 r4'],
    ['AS 6H, each followed by its mate', 'AS AC 6H 6D'],
    ['2 hearts and their mates side by side', 'h1 d2 h3 d4'],
    ['3 cards in Eight Kings order', '8C KH 3S', ['set-up-order-taken']],
    ['all aces in any order', 'AC AH AS AD'],
    ['the four aces in any order', 'AC AH AS AD'],
    ['all red courts in any order', 'JH QH KH JD QD KD'],
    [
      '2C-KC AH, then the other hearts in any order',
      '2C 3C 4C 5C 6C 7C 8C 9C 10C JC QC KC AH 2H 3H 4H 5H 6H 7H 8H 9H 10H JH QH KH',
    ],
    ['2 cards turned end for end, then 3S', "1' 2' 3S"],
    ['empty', 'empty', ['set-up-empty']],
  ])('%s', (text, cards, told: string[] = []) => {
    const reading = read(`packet: ${text}`);
    expect(pile(reading)).toBe(cards);
    expect(codes(reading)).toEqual(told);
  });

  const order = (names: readonly { name: string }[]) => names.map(({ name }) => name).join(' ');
  const names = (cards: Parameters<typeof printCardName>[0][]) => cards.map(printCardName).join(' ');

  test.each(['packet: new pack order', 'packet: full pack in new deck order'])('%s', (text) => {
    const reading = read(text);
    expect(order(reading.cards)).toBe(names([...newPackOrder()]));
    expect(reading.diagnostics).toMatchObject([{ code: 'set-up-order-taken', severity: 'reading' }]);
    // Confirmed by writing it out, which says the same and needs no reading.
    const [fix] = reading.diagnostics[0].fixes;
    expect(order(clean(`packet: ${fix.text}`).cards)).toBe(order(reading.cards));
  });

  test('a stack known by name, from any card', () => {
    const reading = read('packet: full pack in Si Stebbins order, starting with the 4 of hearts');
    const start = { rank: '4', suit: 'hearts' } as const;
    expect(order(reading.cards)).toBe(names(startingWith(namedOrder('Si Stebbins').order, start)));
  });
});

// Which cards are free to face either way would depend on the order.
test.each([
  '4 cards face up or down as they like, then 4 cards face down, all in any order',
  '4 cards face down, then 4 cards face up or down as they like, all in any order',
  '2S, 4 cards, 3 cards face up or down as they like, 3 cards, these in any order',
])('%s: open faces and open order may not overlap in part', (line) => {
  expect(codes(read(`packet: ${line}`))).toContain('set-up-faces-in-order');
});

describe('freedoms', () => {
  test.each([
    ['full pack in any order', [{ free: 'order', pile: 'packet', from: 0, count: 52 }]],
    ['2S 3S, then a shuffled pack, from two packs', [{ free: 'order', pile: 'packet', from: 2, count: 52 }]],
    [
      'any 8 red cards face down and any 8 black face up, in any order',
      [{ free: 'order', pile: 'packet', from: 0, count: 16 }],
    ],
    [
      '4 red cards in any order, 4 black cards in any order',
      [
        { free: 'order', pile: 'packet', from: 0, count: 4 },
        { free: 'order', pile: 'packet', from: 4, count: 4 },
      ],
    ],
    [
      '12 cards in any order, QH, 7 cards in any order',
      [
        { free: 'order', pile: 'packet', from: 0, count: 12 },
        { free: 'order', pile: 'packet', from: 13, count: 7 },
      ],
    ],
    [
      '12 cards in any order, QH, 7 cards, in any order',
      [
        { free: 'order', pile: 'packet', from: 0, count: 12 },
        { free: 'order', pile: 'packet', from: 12, count: 8 },
      ],
    ],
    [
      '4 cards face up or down as they like, then 4 cards in any order',
      [
        { free: 'faces', pile: 'packet', from: 0, count: 4 },
        { free: 'order', pile: 'packet', from: 4, count: 4 },
      ],
    ],
    [
      '2S, then 4 red cards, then 3 aces, all in any order',
      [{ free: 'order', pile: 'packet', from: 0, count: 8 }],
    ],
    [
      '2S, then 4 red cards, 3 aces, these in any order',
      [{ free: 'order', pile: 'packet', from: 1, count: 7 }],
    ],
    ['2S, then 4 cards face up or down as they like', [{ free: 'faces', pile: 'packet', from: 1, count: 4 }]],
    [
      '8 cards either way up, in any order',
      [
        { free: 'faces', pile: 'packet', from: 0, count: 8 },
        { free: 'order', pile: 'packet', from: 0, count: 8 },
      ],
    ],
    [
      '2S, 3 cards, each red or black',
      [{ free: 'attribute', attribute: 'colour', values: ['red', 'black'], cards: [1, 2, 3] }],
    ],
    [
      '2 red cards, each an ace or a king',
      [{ free: 'attribute', attribute: 'rank', values: ['A', 'K'], cards: [0, 1] }],
    ],
  ])('%s', (text, freedoms) => {
    expect(clean(`packet: ${text}`).setUp.freedoms).toEqual(freedoms);
  });

  test('"any" leaves nothing open: it only says that no more is known', () => {
    expect(clean('packet: any 10 cards').setUp.freedoms).toEqual([]);
    expect(clean('packet: any 10 cards').cards[9].attributes).toEqual({});
  });

  test('what is said of several runs at once is told', () => {
    const reading = read('packet: A-4 of spades, 4 red cards in any order');
    expect(reading.setUp.freedoms).toEqual([{ free: 'order', pile: 'packet', from: 0, count: 8 }]);
    expect(reading.diagnostics).toMatchObject([
      { code: 'set-up-reach', severity: 'reading', facts: { what: 'order', runs: 2 } },
    ]);
  });

  test('after "then" it is the last part alone, and that is told too', () => {
    const reading = read('packet: A-4 of spades, then 4 red cards, in any order');
    expect(reading.setUp.freedoms).toEqual([{ free: 'order', pile: 'packet', from: 4, count: 4 }]);
    expect(reading.diagnostics).toMatchObject([{ code: 'set-up-reach', facts: { runs: 1, parts: 2 } }]);
  });

  test('the changes offered settle it', () => {
    const text = 'packet: A-4 of spades, then 4 red cards, in any order';
    const [told] = read(text).diagnostics;
    const mended = told.fixes.map(
      ({ range, text: put }) => text.slice(0, range.from) + put + text.slice(range.to),
    );
    expect(mended).toEqual([
      'packet: A-4 of spades, then 4 red cards in any order',
      'packet: A-4 of spades, then 4 red cards, all in any order',
    ]);
    for (const one of mended) clean(one);
  });
});

describe('what is known of a card without a name', () => {
  test.each([
    ['a card', {}],
    ['a red card', { colour: 'red' }],
    ['a heart', { suit: 'hearts', colour: 'red' }],
    ['a queen', { rank: 'Q', value: 12, parity: 'even', court: 'court' }],
    ['a black ace', { rank: 'A', colour: 'black', value: 1, parity: 'odd', court: 'spot' }],
    ['an even court card', { parity: 'even', court: 'court', rank: 'Q', value: 12 }],
    ['an odd spot card', { parity: 'odd', court: 'spot' }],
  ])('%s', (name, attributes) => {
    const { cards } = clean(`packet: ${name}`);
    expect(cards).toEqual([{ id: 0, name, attributes }]);
  });

  test('a free attribute stands at its first value, and what depends on it is not known', () => {
    const { cards } = clean('packet: 2 court cards, each a queen or a king');
    expect(cards[0].attributes).toEqual({ rank: 'Q', court: 'court' });
  });

  test('unnamed mates share a pair', () => {
    const reading = clean(
      'packet: 3 red cards and their mates in mirror order',
      'left: 2 cards, each followed by its mate',
    );
    expect(reading.cards.map((card) => card.attributes.pair)).toEqual([1, 2, 3, 3, 2, 1, 4, 4, 5, 5]);
    expect(reading.attributes).toEqual({ pair: [1, 2, 3, 4, 5] });
  });
});

describe('attributes of one’s own', () => {
  test('warm is yes or no', () => {
    const reading = clean(
      'warm: hearts, diamonds, "lamp"',
      'packet: 7H 7S "lamp" "key", 2 red cards, 2 clubs, a queen',
    );
    expect(reading.cards.map((card) => card.attributes.warm)).toEqual([
      'yes',
      'no',
      'yes',
      'no',
      'yes',
      'yes',
      'no',
      'no',
      undefined,
    ]);
    expect(reading.attributes).toEqual({ warm: ['yes', 'no'] });
    expect(reading.piles).toEqual(['packet']);
  });

  test('kinds of one’s own', () => {
    const reading = clean('warm: hearts, diamonds', 'packet: 2 warm cards, 2 non-warm aces');
    expect(reading.cards.map(({ name }) => name)).toEqual([
      'a warm card',
      'a warm card',
      'a non-warm ace',
      'a non-warm ace',
    ]);
    expect(reading.cards[0].attributes).toEqual({ warm: 'yes', colour: 'red' });
    expect(reading.cards[2].attributes).toMatchObject({ warm: 'no', colour: 'black', rank: 'A' });
  });

  test('values of one’s own change parity too, and the last word counts', () => {
    const reading = clean('values: "lamp" 3, courts 10, KS 15', 'packet: "lamp" JS KS 9S "key"');
    expect(cardOf(reading, 'lamp')?.attributes).toEqual({ value: 3, parity: 'odd' });
    expect(cardOf(reading, 'JS')?.attributes).toMatchObject({ value: 10, parity: 'even', court: 'court' });
    expect(cardOf(reading, 'KS')?.attributes).toMatchObject({ value: 15, parity: 'odd' });
    expect(cardOf(reading, '9S')?.attributes).toMatchObject({ value: 9, parity: 'odd' });
    expect(cardOf(reading, 'key')?.attributes).toEqual({});
    expect(reading.attributes).toEqual({});
  });

  test('several values', () => {
    const reading = clean(
      'season: hearts = spring, A-5 of clubs = winter, "sun" = summer',
      'packet: 2H 3C 9C "sun", 2 spring cards',
    );
    expect(reading.cards.map((card) => card.attributes.season)).toEqual([
      'spring',
      'winter',
      undefined,
      'summer',
      'spring',
      'spring',
    ]);
    expect(reading.attributes).toEqual({ season: ['spring', 'winter', 'summer'] });
  });

  test('cards of one’s own may have a colour', () => {
    const reading = clean('colour: "lamp" = red, joker = black', 'packet: "lamp", joker, red joker');
    expect(reading.cards.map((card) => card.attributes.colour)).toEqual(['red', 'black', 'black']);
  });

  test('a list of cards is a pile, unless its cards lie in one already', () => {
    expect(clean('north: 7H, "lamp"', 'south: 8H').piles).toEqual(['north', 'south']);
    const reading = read('packet: full pack in any order', 'lucky: 7H');
    expect(reading.piles).toEqual(['packet']);
    expect(cardOf(reading, '7H')?.attributes.lucky).toBe('yes');
    expect(reading.diagnostics).toMatchObject([{ code: 'set-up-taken-as-attribute', severity: 'reading' }]);
    // Words that only ever name a pile stay piles, and the card is there twice.
    expect(codes(read('packet: full pack in any order', 'left: 7H'))).toEqual(['duplicate-card']);
  });
});

describe('piles', () => {
  test('one on a line, empty ones too', () => {
    const reading = clean('the packet: 2S', 'Pile two: 3S, "Lamp"', 'Anna\'s hand: "lamp"', 'table: empty');
    expect(reading.piles).toEqual(['packet', 'pile 2', "anna's hand", 'table']);
    expect(reading.setUp.piles.map(({ name }) => name)).toEqual(['packet', 'pile 2', "anna's hand"]);
    expect(reading.cards.map(({ id, name }) => [id, name])).toEqual([
      [0, '2S'],
      [1, '3S'],
      [2, 'Lamp'],
      [3, 'Lamp'],
    ]);
  });
});

describe('printing', () => {
  test.each([
    ['Packet:2S 9h 4C  KD, face-down', 'packet: 2S 9H 4C KD, face down'],
    ['packet: 10 alternately red & black', null],
    ['packet: ten cards, alternating red and black.', 'packet: 10 cards alternately red and black'],
    ['packet: shuffled deck', 'packet: full pack in any order'],
    [
      'packet: ace to king of spades face down; 2H 4H 6H face up',
      'packet: A-K of spades face down, then 2H 4H 6H face up',
    ],
    [
      'packet: club heart spade diamond in turn, 52 in all',
      'packet: clubs hearts spades diamonds repeated, 52 cards',
    ],
    [
      'packet: any 8 red cards face down and any 8 black face up, shuffled',
      'packet: any 8 red cards face down, any 8 black cards face up, in any order',
    ],
    [
      'packet: 8 cards, each red or black, face up or down',
      'packet: 8 cards, each red or black, face up or down as they like',
    ],
    ['packet: new deck order', 'packet: full pack in new pack order'],
    ['packet: 8 cards with their mates mirrored', 'packet: 8 cards and their mates in mirror order'],
    ['values: "lamp" = 3, courts 10', 'values: "lamp" 3, court cards 10'],
    ['warm: hearts and diamonds', 'warm: hearts, diamonds'],
    ['table: nothing', 'table: empty'],
    ['  something else  ', 'something else'],
  ])('%s', (text, printed) => {
    expect(printSetUp(read(text))).toEqual([printed ?? text]);
  });
});

describe('no cards at all', () => {
  test('no lines', () => {
    expect(readSetUp([])).toMatchObject({ cards: [], piles: [], diagnostics: [{ code: 'set-up-empty' }] });
  });
  test('only empty piles', () => {
    expect(codes(read('packet: empty', 'table: nothing'))).toEqual(['set-up-empty']);
  });
});
