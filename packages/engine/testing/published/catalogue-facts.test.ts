import { describe, expect, test } from 'vitest';
import { decide } from '../../src/proving/decide.ts';
import { routineOf, verdictsByBoth } from '../effects/by-both.ts';
import { cards, exits, exitsFrom, onlyOrder, outcomes, packetOf } from './outcomes.ts';

// Facts of the trade about single procedures and endings; common practice, no source.

test.each([5, 8])('a cut of %i cards that is crossed shows the old top and the old bottom card', (n) => {
  const ends = exits(n, 'Cut the packet and cross the cut.');
  expect(ends).toHaveLength(n - 1);
  for (const { moment } of ends) {
    expect(packetOf(moment.table, 'lower part')[0].from).toBe(1);
    expect(packetOf(moment.table, 'upper part').at(-1)?.from).toBe(n);
  }
});

test.each(cards(8))(
  'running %i of 8 and throwing the rest is counting them and dropping the rest on top',
  (k) => {
    expect(onlyOrder(8, `Run ${k} cards and throw the packet on them.`)).toEqual(
      onlyOrder(8, `Count ${k} cards to the table and drop the rest on top.`),
    );
  },
);

test.each([
  [2, 4],
  [3, 4],
  [5, 3],
])('%i rows of %i, gathered by columns: row and column change places', (rows, columns) => {
  const order = onlyOrder(
    rows * columns,
    `Deal the packet into ${rows} rows of ${columns} and gather the columns.`,
  );
  const wanted = cards(columns).flatMap((column) => cards(rows).map((row) => (row - 1) * columns + column));
  expect(order).toEqual(wanted);
});

test.each([8, 9])(
  '%i cards in two hands, one dropped on the other: odd places and even ones, both reversed',
  (n) => {
    const order = onlyOrder(
      n,
      'Deal the packet alternately into two hands and drop the first on the second.',
    );
    const odd = cards(n).filter((place) => place % 2 === 1);
    const even = cards(n).filter((place) => place % 2 === 0);
    expect(order).toEqual([...odd.reverse(), ...even.reverse()]);
  },
);

test('a clock laid out backwards from twelve undoes one reversal', () => {
  const hours = (...steps: readonly string[]): (number | undefined)[] => {
    const [{ moment }] = exits(12, ...steps);
    return cards(12).map((hour) => packetOf(moment.table, `hour ${hour}`)[0]?.from);
  };
  expect(hours('Lay the packet out as a clock, clockwise from 1.')).toEqual(cards(12));
  expect(hours('Lay the packet out as a clock, anticlockwise from 12.')).toEqual(cards(12).reverse());
  expect(
    hours('Deal the packet into one pile.', 'Lay the packet out as a clock, anticlockwise from 12.'),
  ).toEqual(cards(12));
});

test.each(cards(5))(
  'the top %i of 10 woven into the rest: in to the even places, out to the odd ones',
  (k) => {
    const inside = onlyOrder(10, `In-faro the top ${k} cards into the rest.`);
    const outside = onlyOrder(10, `Out-faro the top ${k} cards into the rest.`);
    cards(k).forEach((card) => {
      expect(inside[2 * card - 1]).toBe(card);
      expect(outside[2 * card - 2]).toBe(card);
    });
  },
);

test('pushing off and putting beneath is a cut, dealing and putting beneath is not', () => {
  const cuts = outcomes(6, 'Cut the packet.').map((packet) => JSON.stringify(packet));
  const pushed = outcomes(
    6,
    'Push off any number of cards to the table.',
    'Put the table beneath the packet.',
  );
  const dealt = outcomes(6, 'Deal any number of cards to the table.', 'Put the table beneath the packet.');
  expect(pushed.map((packet) => JSON.stringify(packet)).sort()).toEqual(cuts.sort());
  expect(dealt.filter((packet) => cuts.includes(JSON.stringify(packet)))).toHaveLength(2);
});

describe('two pointed at and one of them removed, in turn', () => {
  const steps = (n: number, first: 'spectator' | 'you'): string => {
    const lines: string[] = [];
    let picks = first;
    for (let left = n; left > 1; left--) {
      const [one, other] =
        picks === 'spectator'
          ? ['The spectator openly takes', 'You take']
          : ['You take', 'The spectator openly takes'];
      lines.push(
        `${one} any 2 cards from the packet to the table.`,
        `${other} any card from the table to the bowl.`,
      );
      lines.push('Put the table on the packet.');
      picks = picks === 'spectator' ? 'you' : 'spectator';
    }
    return lines.map((line, i) => `${i + 1}. ${line}`).join('\n');
  };

  test.each([
    [2, 'spectator', 'proved'],
    [3, 'spectator', 'refuted'],
    [4, 'spectator', 'proved'],
    [5, 'spectator', 'refuted'],
    [2, 'you', 'refuted'],
    [3, 'you', 'proved'],
    [4, 'you', 'refuted'],
    [5, 'you', 'proved'],
  ] as const)('%i cards, %s first: %s', (n, first, verdict) => {
    const names = 'QH 2S 3S 4S 5S'.split(' ').slice(0, n).join(' ');
    const routine = routineOf(
      `packet: ${names}, face up`,
      steps(n, first),
      'The QH is the only card left in the packet.',
    );
    expect(decide(routine).verdict).toBe(verdict);
  });
});

describe('endings beside brute force', () => {
  test('the value of the bottom card tells how many were moved', () => {
    const working = (n: number): string =>
      `1. The spectator thinks of a number from 1 to ${n}, call it N.\n2. Transfer N cards singly from top to bottom.`;
    const setUp = 'packet: A-6 of hearts, face down';
    expect(verdictsByBoth(setUp, working(6), 'The value of the bottom card is N.')).toEqual(['proved']);
    expect(verdictsByBoth(setUp, working(7), 'The value of the bottom card is N.')).toEqual(['refuted']);
    expect(
      verdictsByBoth(
        setUp,
        '1. The spectator notes any card, call it chosen.',
        'The chosen card lies at the place of its value.',
      ),
    ).toEqual(['proved']);
  });

  test('the key card goes round with its neighbour, and only cuts let it', () => {
    const setUp = 'packet: 4 cards, KS, face down';
    const working = (mix: string): string =>
      `1. The spectator notes the top card, call it chosen.\n2. ${mix}`;
    const ends = [
      'Going round, the chosen card is 1 place below the KS.',
      'The chosen card is next to the KS.',
    ];
    expect(verdictsByBoth(setUp, working('Cut the packet.'), ...ends)).toEqual(['proved', 'refuted']);
    expect(verdictsByBoth(setUp, working('Cut the packet at 1 to 4.'), ...ends)).toEqual([
      'proved',
      'proved',
    ]);
    expect(verdictsByBoth(setUp, working('Overhand-shuffle the packet.'), ...ends)).toEqual([
      'refuted',
      'refuted',
    ]);
  });

  test('the hand with the odd card among three threes loses', () => {
    const setUp = 'packet: JC QS QH QD 7C 7S 7H 4D 4C 4S, face down';
    const even = '1. Deal the packet into 2 hands.';
    const cut = '1. Cut the packet at an even number.\n2. Deal the packet into 2 hands.';
    expect(verdictsByBoth(setUp, even, 'Hand 2 beats hand 1.', 'Hand 1 beats hand 2.')).toEqual([
      'proved',
      'refuted',
    ]);
    expect(verdictsByBoth(setUp, cut, 'Hand 2 beats hand 1.')).toEqual(['proved']);
    expect(
      verdictsByBoth(setUp, '1. Cut the packet.\n2. Deal the packet into 2 hands.', 'Hand 2 beats hand 1.'),
    ).toEqual(['refuted']);
  });
});

test('an order laid for the deal under and down comes out from ace to eight', () => {
  const [{ moment }] = exitsFrom('8 1 5 2 7 3 6 4', 'Deal the packet under-down into a pile.');
  expect(packetOf(moment.table).map(({ from }) => [8, 1, 5, 2, 7, 3, 6, 4][from - 1])).toEqual(
    cards(8).reverse(),
  );
});
