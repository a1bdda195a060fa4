import { expect, test } from 'vitest';
import { noteText } from '../../testing/note-text.ts';
import { check } from '../check.ts';

const of = (setUp: string, working: readonly string[]) =>
  check(noteText([setUp], working, ['All cards are face down.'])).report.coverage;

test.each([
  ['packet: 4 cards, face down', ['Cut the packet.'], '4', '1'],
  ['packet: 4 cards in any order, face down', ['Cut the packet.', 'Cut the packet.'], '16', '24'],
  ['packet: 3 cards in any order, face up or down as they like', ['Cut the packet at 1.'], '1', '48'],
  ['packet: 3 cards, each red or black, face down', ['Either: milk the packet, or do nothing.'], '2', '8'],
  // A cut and an interleaving: the sum of the binomial coefficients, 2^6, with cutting none and cutting all taken as one.
  ['packet: 6 cards, face down', ['Riffle the packet.'], '63', '1'],
  ['packet: 4 cards, face down', ['Any number of times: cut the packet.'], 'unlimited', '1'],
])('%s, %j: %s performances, %s starts', (setUp, working, performances, starts) => {
  expect(of(setUp, working)).toMatchObject({ performances, starts });
});

test('steps inside blocks count, and moments that differ in sizes only', () => {
  expect(
    of('packet: 4 cards, face down', ['2 times:', '   1. Cut the packet.', '   2. Milk the packet.']),
  ).toMatchObject({
    cards: 4,
    steps: 3,
    locations: 5,
    edges: 10,
  });
});
