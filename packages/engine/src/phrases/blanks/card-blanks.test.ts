import { describe, expect, test } from 'vitest';
import { SAMPLE_NAMES } from '../blank.ts';
import { BLANKS } from '../blanks.ts';
import { tokenize } from '../tokens.ts';
import type { ArgValue, Names } from '../values.ts';

const OWN =
  'kind onekind oneclass class those state onestate tally relation relations numeric groups places cardlist rank howmany';

function readings(type: string, text: string, names: Names = SAMPLE_NAMES): ArgValue[] {
  const tokens = tokenize(text);
  return BLANKS[type]
    .read(tokens, 0, names)
    .filter((reading) => reading.next === tokens.length && reading.trouble === undefined)
    .map(({ value }) => value);
}

describe.each(OWN.split(' '))('%s', (type) => {
  test.each(BLANKS[type].samples.map((value) => [BLANKS[type].print(value), value] as const))(
    '"%s" reads back',
    (text, value) => {
      expect(readings(type, text)[0]).toEqual(value);
    },
  );

  test('longest reading first', () => {
    for (const sample of BLANKS[type].samples) {
      const nexts = BLANKS[type]
        .read(tokenize(BLANKS[type].print(sample)), 0, SAMPLE_NAMES)
        .map((r) => r.next);
      expect(nexts).toEqual([...nexts].sort((a, b) => b - a));
    }
  });
});

const red = { test: 'attribute', attribute: 'colour', values: ['red'] };
const up = { test: 'bit', bit: 'up' };

test.each([
  ['the 10♣', [{ test: 'card', name: '10C' }]],
  ['Ten of Clubs', [{ test: 'card', name: '10C' }]],
  ['10 of clubs', [{ test: 'card', name: '10C' }]],
  ['“Lamp”', [{ test: 'card', name: 'lamp' }]],
  ['red face-up cards', [up, red]],
  ['cards that are red and face up', [up, red]],
  ['deuces', [{ test: 'attribute', attribute: 'rank', values: ['2'] }]],
  ['picture cards', [{ test: 'attribute', attribute: 'court', values: ['court'] }]],
  ['spring cards', [{ test: 'attribute', attribute: 'season', values: ['spring'] }]],
  ['hearts or spades', [{ test: 'attribute', attribute: 'suit', values: ['hearts', 'spades'] }]],
])('a kind may be said as %s', (text, tests) => {
  expect(readings('kind', text)[0]).toEqual({ tests });
});

test.each([
  ['a red ace', [red, { test: 'attribute', attribute: 'rank', values: ['A'] }]],
  ['a 7', [{ test: 'attribute', attribute: 'rank', values: ['7'] }]],
  ['an ace or a king', [{ test: 'attribute', attribute: 'rank', values: ['A', 'K'] }]],
  ['not face down', [up]],
  ['red and face up', [up, red]],
])('a state may be said as %s', (text, tests) => {
  expect(readings('onestate', text)[0]).toEqual({ tests });
});

test('the ace of spades is a card although its rank is written like an article', () => {
  const names = { ...SAMPLE_NAMES, cards: ['AS', 'AH'] };
  for (const text of ['AS', 'A♠', 'A of spades', 'the A ♠', 'ace of spades'])
    expect(readings('cardlist', text, names)[0]).toEqual(['AS']);
  expect(readings('cardlist', 'AS A♥', names)[0]).toEqual(['AS', 'AH']);
});

test('a card that the set-up lacks is a trouble', () => {
  expect(BLANKS.kind.read(tokenize('the 9H'), 0, SAMPLE_NAMES)).toEqual([
    {
      value: { tests: [{ test: 'card', name: '9H' }] },
      next: 2,
      trouble: { code: 'unknown-card', facts: { card: '9H' } },
    },
  ]);
});

test.each([
  ['face-up red cards in pile 1', 'red cards in pile 1 that are face up'],
  ['face-up cards', 'cards face up'],
  ['face-up cards', 'face up'],
  ['black cards that are not chosen', 'black cards are not chosen'],
  ['face-down cards in the packet', 'cards left in the packet face down'],
])('"%s" may be said as "%s"', (printed, said) => {
  expect(BLANKS.tally.print(readings('tally', said)[0])).toBe(printed);
});

test.each([
  ['every pair', 'each pair of cards'],
  ['every block of 4', 'every four'],
  ['every block of 4', 'each 4 cards of the packet'],
  ['every block of 4 of pile 2 from the bottom', 'every set of 4 from the bottom of pile 2'],
  ['every pair of neighbours going round', 'every two neighbours going round'],
  ['each pile', 'every hand'],
])('"%s" may be said as "%s"', (printed, said) => {
  expect(BLANKS.groups.print(readings('groups', said)[0])).toBe(printed);
});

test.each([
  ['the top card of the packet and the bottom card of the packet', 'the top and bottom cards'],
  ['the 2nd card of pile 1 and the 5th card of pile 1', 'the 2nd and the 5th card of pile 1'],
  ['the top cards of the piles', 'the top cards of all hands'],
])('"%s" may be said as "%s"', (printed, said) => {
  expect(BLANKS.places.print(readings('places', said)[0])).toBe(printed);
});

test('hostile text costs little', () => {
  const text = 'red and face up and hearts or spades and not ace of '.repeat(4000);
  const tokens = tokenize(text);
  for (const type of OWN.split(' '))
    for (const at of [0, 5]) expect(BLANKS[type].read(tokens, at, SAMPLE_NAMES).length).toBeLessThan(200);
});
