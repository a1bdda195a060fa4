import { expect, test } from 'vitest';
import type { Card } from './card.ts';
import { playingCard } from './pack.ts';
import { sayCard, shortName, showPile, showPiles, type Laid } from './show.ts';

const lie = (card: Card, up: 0 | 1 = 0, end: 0 | 1 = 0): Laid => ({ card, up, end });
const ten = playingCard(0, { rank: '10', suit: 'clubs' });
const lamp: Card = { id: 1, name: 'lamp', attributes: {} };
const red: Card = { id: 2, name: 'a red card', attributes: { colour: 'red' } };
const heart: Card = { id: 3, name: 'a heart', attributes: { suit: 'hearts', colour: 'red' } };
const queen: Card = { id: 4, name: 'a black queen', attributes: { rank: 'Q', colour: 'black', value: 12 } };
const card: Card = { id: 15, name: 'a card', attributes: {} };
const joker: Card = { id: 16, name: 'red joker', attributes: { rank: 'joker', colour: 'red' } };

test('a pile reads from the top, with faces and ends', () => {
  expect(showPile([lie(ten), lie(lamp, 1), lie(red, 0, 1), lie(card, 1, 1), lie(joker)])).toBe(
    `10C "lamp"^ r3' 16^' red joker`,
  );
  expect(showPile([])).toBe('empty');
});

test('piles stand one on a line', () => {
  expect(
    showPiles([
      { name: 'packet', cards: [lie(ten, 1)] },
      { name: 'table', cards: [] },
    ]),
  ).toEqual(['packet: 10C^', 'table: empty']);
});

test('cards without a name are told apart by what is known and by number', () => {
  expect([red, heart, queen, card].map(shortName)).toEqual(['r3', 'h4', 'Q/b5', '16']);
});

test('cards are said aloud in words', () => {
  expect([ten, lamp, red].map(sayCard)).toEqual(['ten of clubs', 'lamp', 'a red card']);
});
