import { describe, expect, test } from 'vitest';
import { faceOf, sayCard } from './card-face.ts';
import { fitName } from './own-name.ts';

describe('what is drawn for a card', () => {
  test.each([
    [
      { name: '10C', attributes: { rank: '10', suit: 'clubs', colour: 'black' } },
      { kind: 'pip', rank: '10', suit: 'clubs' },
    ],
    [
      { name: 'a red card', attributes: { colour: 'red' } },
      { kind: 'colour', colour: 'red' },
    ],
    [
      { name: '"lamp"', attributes: { warm: 'yes' } },
      { kind: 'own', name: 'lamp' },
    ],
    [
      { name: '"lamp"', attributes: { colour: 'red' } },
      { kind: 'own', name: 'lamp' },
    ],
    [
      { name: 'joker', attributes: { rank: 'constructor', suit: 'clubs' } },
      { kind: 'own', name: 'joker' },
    ],
  ])('%o', (card, face) => {
    expect(faceOf(card)).toEqual(face);
  });
});

describe('what is said of a card', () => {
  const face = { kind: 'pip', rank: '10', suit: 'clubs' } as const;
  test('face up', () => expect(sayCard(face, { up: true })).toBe('ten of clubs, face up'));
  test('face down keeps its secret', () => expect(sayCard(face, { up: false })).toBe('a card face down'));
  test('face down, known', () => expect(sayCard(face, { up: false }, true)).toBe('ten of clubs, face down'));
  test('end for end', () => {
    expect(sayCard(face, { up: false, end: true })).toBe('a card face down, turned end for end');
  });
});

describe('a name of one’s own fits its card', () => {
  test.each([
    'lamp',
    'the old lighthouse keeper',
    'x'.repeat(300),
    'a b c d e f g h i j k l m n o p q r s t',
    '',
  ])('%s', (name) => {
    const { lines, size } = fitName(name);
    expect(lines.length).toBeLessThanOrEqual(4);
    for (const line of lines) expect([...line].length * size * 0.56).toBeLessThanOrEqual(58.01);
    expect(lines.length * size * 1.15).toBeLessThanOrEqual(90);
  });
  test('a short name is kept whole and large', () =>
    expect(fitName('lamp')).toEqual({ lines: ['lamp'], size: 15 }));
});

test('a card of which nothing is known has a face without a word', () => {
  expect(faceOf({ name: 'a card', attributes: {} })).toEqual({ kind: 'any' });
  expect(sayCard({ kind: 'any' }, { up: true })).toBe('a card, face up');
});
