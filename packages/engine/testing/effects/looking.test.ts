import { describe, expect, test } from 'vitest';
import { verdictsByBoth } from './by-both.ts';

// Whole effects in which somebody looks at cards; every verdict is also found by walking through all performances.

// Common practice, no source: as many pairs both red as both black, if there are as many red cards as black.
describe('red and black sorted', () => {
  const pairs =
    '1. Shuffle the packet.\n2. Sort the packet in pairs, two red cards to the left, mixed pairs to the table and the others to the right.';

  test.each([
    ['AS 2H 3C 4D, face down', 'proved'],
    ['AS 2H 3C 4C, face down', 'refuted'],
  ])('%s: the two heaps of one colour are equal: %s', (setUp, verdict) => {
    expect(
      verdictsByBoth(`packet: ${setUp}`, pairs, 'There are as many cards in the left as cards in the right.'),
    ).toEqual([verdict]);
  });

  test('one by one the heaps hold what there is, and nothing is known of their order', () => {
    const working =
      '1. Shuffle the packet.\n2. Sort the packet, the red cards to the left and the others to the right.';
    const ends = [
      'The left is all red.',
      'The right has exactly 2 cards.',
      'The top card of the left is the 2H.',
    ];
    expect(verdictsByBoth('packet: AS 2H 3C 4D, face down', working, ...ends)).toEqual([
      'proved',
      'proved',
      'refuted',
    ]);
  });
});

// The turnover principle: with faces and classes in step, the faces of a pair agree exactly when the classes differ.
describe('looking whether the faces of a pair agree', () => {
  const setUp = 'packet: AS 2H 3C 4D 5S 6H, face down';
  const working = (cards: string): string => `1. 2 times:
   1. Cut the packet.
   2. Turn over the top ${cards} together.
2. Deal the packet in pairs, pairs that face the same way to the left and the others to the right.`;
  const ends = [
    'There are as many red cards in the left as black cards in the left.',
    'There are as many red cards in the right as black cards in the right.',
    'Every pair of the left differs in colour.',
  ];

  test('pairs that face the same way differ in colour', () => {
    expect(verdictsByBoth(setUp, working('2'), ...ends)).toEqual(['proved', 'proved', 'proved']);
  });

  test('one card turned by itself breaks it', () => {
    const broken = working('2').replace('2. Deal', '2. Turn over the top card.\n3. Deal');
    expect(verdictsByBoth(setUp, broken, ...ends)).toEqual(['refuted', 'refuted', 'refuted']);
  });

  test('the answer to a look tells the colours of the pair', () => {
    const look = `1. 2 times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. See whether the top 2 cards face the same way, call it K.
3. If K is 1:
   1. Push off 2 cards to the left.
4. If K is 0:
   1. Push off 2 cards to the right.`;
    expect(
      verdictsByBoth(
        setUp,
        look,
        'There are as many red cards in the left as black cards in the left.',
        'The left has exactly 2 cards or the right has exactly 2 cards.',
        'The left has exactly 2 cards.',
      ),
    ).toEqual(['proved', 'proved', 'refuted']);
  });
});

describe('sloppy mixing, face up into face down', () => {
  const setUp = 'packet: AS 2H 3C 4D, face down';
  const mix = '1. 2 times: cut the packet, turn either half over and push the halves together.';

  test('any facing comes about, and no card is lost', () => {
    const ends = [
      'All cards face the same way.',
      'Exactly 2 cards are red.',
      'The packet has exactly 4 cards.',
    ];
    expect(verdictsByBoth(setUp, mix, ...ends)).toEqual(['refuted', 'proved', 'proved']);
  });

  // An old puzzle about coins in the dark: as many as show their faces are counted off and turned over.
  test('so many counted off and turned over', () => {
    const working = (turn: string): string =>
      `${mix}\n2. Count the face-up cards, call the number N.\n3. Deal N cards to the shelf.${turn}`;
    const end = 'There are as many face-up cards in the shelf as face-up cards in the packet.';
    expect(verdictsByBoth(setUp, working('\n4. Turn the shelf over.'), end)).toEqual(['proved']);
    expect(verdictsByBoth(setUp, working(''), end)).toEqual(['refuted']);
  });

  test('after the face-up cards are taken out, all that are left lie face down', () => {
    const ends = [
      'Exactly 0 face-down cards are in the table.',
      'There are as many face-up cards in the table as face-up cards.',
      'All cards are face down.',
    ];
    const working = `${mix}\n2. Take out the face-up cards.`;
    expect(verdictsByBoth('packet: AS 2H 3C, face down', working, ...ends)).toEqual([
      'proved',
      'proved',
      'refuted',
    ]);
  });

  test('righted, all face down, and only where they lie can be spoken of', () => {
    const working = `${mix}\n2. Turn every face-up card face down.`;
    const ends = ['All cards are face down.', 'The packet is in its starting order.'];
    expect(verdictsByBoth(setUp, working, ...ends)).toEqual(['proved', 'refuted']);
  });
});

// Righting after the turnover principle: what is taken out belongs to one class.
test('the cards taken out face up are of one colour', () => {
  const working = (cards: string): string => `1. 2 times:
   1. Cut the packet.
   2. Turn over the top ${cards} together.
2. Deal the packet into a pile, turning every second card.
3. Take out the face-up cards to the basket.`;
  const ends = ['The basket agrees in colour.', 'The basket has exactly 3 cards.'];
  const setUp = 'packet: AS 2H 3C 4D 5S 6H, face down';
  expect(verdictsByBoth(setUp, working('2'), ...ends)).toEqual(['proved', 'proved']);
  expect(verdictsByBoth(setUp, working('3'), ...ends)).toEqual(['refuted', 'proved']);
});

// From the trade: cards torn in half and stacked are two equal runs, and cuts are free.
describe('torn in half and stacked', () => {
  const setUp = 'packet: A-4 of hearts torn in half and stacked, face down';
  const apart = 'Every pair half a packet apart is the two halves of one card.';

  test('after any cuts the two halves of a card lie half the packet apart', () => {
    expect(verdictsByBoth(setUp, '1. Any number of times: cut the packet.', apart)).toEqual(['proved']);
    expect(verdictsByBoth(setUp, '1. Cut the packet.\n2. Riffle the packet.', apart)).toEqual(['refuted']);
  });

  test.each([
    ['in the middle', 'proved'],
    ['anywhere', 'refuted'],
  ])('three buried %s: %s', (where, verdict) => {
    const working = `1. Any number of times: cut the packet.\n2. Bury the top 3 cards ${where}.`;
    const ends = 'The top card and the bottom card are the two halves of one card.';
    expect(verdictsByBoth(setUp, working, ends)).toEqual([verdict]);
  });

  // One stop leaves six halves, two leave five, three leave four; the last of them is number 2L + 1, dealing under-down.
  test.each([
    ['1 to 3', 'proved'],
    ['1 to 4', 'refuted'],
  ])('%s thrown away, seven moved, every second one: %s', (number, verdict) => {
    const working = `1. Cut the packet.
2. Bury the top 3 cards in the middle.
3. Take out the top card to the pocket.
4. Deal ${number} cards to the wind.
5. Transfer 7 cards singly from top to bottom.
6. Deal the packet under-down to the table until one card is left.`;
    const end = 'The top card of the pocket and the top card of the packet are the two halves of one card.';
    expect(verdictsByBoth(setUp, working, end)).toEqual([verdict]);
  });
});
