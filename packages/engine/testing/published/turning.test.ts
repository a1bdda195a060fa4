import { expect, test } from 'vitest';
import { anyTimes } from '../naive/write.ts';
import { exits, outcomes, packetOf } from './outcomes.ts';
import { CUT_AND_TURN_COUNTS } from './values.ts';

const cases = CUT_AND_TURN_COUNTS.flatMap((row, i) => row.map((count, j) => [i + 2, j + 1, count] as const));

// The larger ones take seconds each; 6 cards hold every case of the rule but the odd sizes beyond 5.
test.each(cases.filter(([, , count]) => count <= 2000))(
  '%i cards, cut and turn over %i: %i arrangements',
  (n, k, count) => {
    expect(outcomes(n, anyTimes(`Cut and turn over the top ${k}.`))).toHaveLength(count);
  },
);

test('six cards, any even block: 2 x 6! arrangements', () => {
  const turned = anyTimes('Cut and turn over an even number of cards from the top.');
  expect(outcomes(6, turned)).toHaveLength(1440);
});

// The equality of face-up cards at odd and even places: S. A. Fernandez de Soto Guerrero, arXiv:2308.02684.
test.each([
  [2, 2],
  [4, 6],
  [6, 20],
])('%i cards: %i face patterns, and as many face up at odd places as at even ones', (n, patterns) => {
  const all = outcomes(n, anyTimes('Cut and turn over the top 2.'));
  const up = (packet: (typeof all)[number], odd: number): number =>
    packet.filter((card, i) => card.up === 1 && i % 2 === odd).length;
  expect(all.every((packet) => up(packet, 0) === up(packet, 1))).toBe(true);
  expect(new Set(all.map((packet) => packet.map((card) => card.up).join(''))).size).toBe(patterns);
});

// P. Diaconis, R. Graham, Magical Mathematics (Princeton 2012), ch. 1.
test('six cards: after any number of cuts and turns, turning every second card leaves three face up', () => {
  const all = outcomes(
    6,
    anyTimes('Cut and turn over the top 2.'),
    'Deal the packet into a pile, turning every second card.',
  );
  expect(all.length).toBeGreaterThan(20);
  for (const packet of all) expect(packet.filter(({ up }) => up === 1)).toHaveLength(3);
});

// P. Diaconis, R. Graham, Magical Mathematics (Princeton 2012), ch. 1.
test('four cards: the bottom card remembered is the only one that faces the other way', () => {
  const ends = exits(
    4,
    'Transfer 1 card from top to bottom.',
    'Turn the top card over.',
    anyTimes('Cut and turn over the top 2.'),
    'Cut the packet.',
    'Turn the top card over.',
    'Transfer 1 card from top to bottom.',
    'Transfer 1 card from top to bottom.',
    'Turn the top card over.',
  );
  expect(ends.length).toBeGreaterThan(4);
  for (const { moment } of ends) {
    const packet = packetOf(moment.table);
    const remembered = packet.find(({ from }) => from === 4);
    expect(
      packet
        .filter(({ up }) => up !== remembered?.up)
        .map(({ from }) => from)
        .sort((a, b) => a - b),
    ).toEqual([1, 2, 3]);
  }
});
