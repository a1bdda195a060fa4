import { describe, expect, test } from 'vitest';
import { parseCardName, printCardName, SUITS, valueOf, type PipCard } from './names.ts';
import { attributesOf, fullPack, PACK } from './pack.ts';
import { NAMED_ORDERS, namedOrder, newPackOrder, startingWith } from './stacks.ts';

const printed = (order: readonly PipCard[]) => order.map(printCardName).join(' ');

// W. C. "Si" Stebbins (W. Vino), Card Tricks and the Way They Are Performed, about 1898: step three, suits C H S D.
const SI_STEBBINS =
  'AC 4H 7S 10D KC 3H 6S 9D QC 2H 5S 8D JC AH 4S 7D 10C KH 3S 6D 9C QH 2S 5D 8C JH ' +
  'AS 4D 7C 10H KS 3D 6C 9H QS 2D 5C 8H JS AD 4C 7H 10S KD 3C 6H 9S QD 2C 5H 8S JD';

// Traditional rhyme for the values; the suit order is a free choice, C H S D here.
const EIGHT_KINGS =
  '8C KH 3S 10D 2C 7H 9S 5D QC 4H AS 6D JC 8H KS 3D 10C 2H 7S 9D 5C QH 4S AD 6C JH ' +
  '8S KD 3C 10H 2S 7D 9C 5H QS 4D AC 6H JS 8D KC 3H 10S 2D 7C 9H 5S QD 4C AH 6S JD';

test('Si Stebbins order is the published one', () => {
  expect(printed(namedOrder('Si Stebbins').order)).toBe(SI_STEBBINS);
});

test('Eight Kings order is the traditional one', () => {
  expect(printed(namedOrder('Eight Kings').order)).toBe(EIGHT_KINGS);
});

// Common practice, no source: a pack of an American maker, dealt face down.
test('new pack order begins with the ace of hearts, has two kings at the middle and ends with the ace of spades', () => {
  const order = newPackOrder();
  expect(printed(order.slice(0, 3))).toBe('AH 2H 3H');
  expect(printed(order.slice(12, 14))).toBe('KH AC');
  expect(printed(order.slice(25, 27))).toBe('KC KD');
  expect(printed(order.slice(38, 40))).toBe('AD KS');
  expect(printed(order.slice(51))).toBe('AS');
});

test.each(NAMED_ORDERS)('$title holds every card once, from any start', ({ order }) => {
  for (const start of order) {
    const cut = startingWith(order, start);
    expect(cut[0]).toEqual(start);
    expect(new Set(cut.map(printCardName)).size).toBe(52);
  }
});

describe('cyclic stacks, from any start', () => {
  test.each(['Si Stebbins', 'Eight Kings'] as const)('%s', (id) => {
    const { order } = namedOrder(id);
    const at = (p: number) => order[p % 52];
    for (let p = 0; p < 52; p++) {
      expect(new Set([0, 1, 2, 3].map((k) => at(p + k).suit)).size).toBe(4);
      expect(new Set(Array.from({ length: 13 }, (_, k) => at(p + k).rank)).size).toBe(13);
      expect(at(p + 13).rank).toBe(at(p).rank);
      expect(SUITS.indexOf(at(p + 13).suit)).toBe((SUITS.indexOf(at(p).suit) + 1) % 4);
      expect(attributesOf(at(p + 26)).colour).toBe(attributesOf(at(p)).colour);
    }
  });

  test('Si Stebbins: each place by formula', () => {
    namedOrder('Si Stebbins').order.forEach((card, x) => {
      expect(valueOf(card.rank)).toBe(((3 * x) % 13) + 1);
      expect(SUITS.indexOf(card.suit)).toBe(x % 4);
    });
  });
});

describe('the pack', () => {
  test('every card knows what it is', () => {
    const pack = fullPack();
    expect(pack.map(({ id }) => id)).toEqual(Array.from({ length: 52 }, (_, i) => i));
    pack.forEach(({ name }, i) => expect(parseCardName(name)).toEqual(PACK[i]));
    expect(pack.find(({ name }) => name === 'JD')?.attributes).toEqual({
      rank: 'J',
      suit: 'diamonds',
      colour: 'red',
      value: 11,
      parity: 'odd',
      court: 'court',
    });
    expect(pack.find(({ name }) => name === '10C')?.attributes).toEqual({
      rank: '10',
      suit: 'clubs',
      colour: 'black',
      value: 10,
      parity: 'even',
      court: 'spot',
    });
  });

  test.each([
    ['colour', 'red', 26],
    ['suit', 'spades', 13],
    ['court', 'court', 12],
    ['parity', 'odd', 28],
    ['rank', 'A', 4],
  ])('%s %s: %d cards', (attribute, value, count) => {
    expect(fullPack().filter((card) => card.attributes[attribute] === value)).toHaveLength(count);
  });
});
