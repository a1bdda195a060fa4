import { describe, expect, test } from 'vitest';
import { MOVES } from '../../src/moves/index.ts';
import { decide } from '../../src/proving/decide.ts';
import { routineOf, verdictsByBoth } from '../effects/by-both.ts';
import { cardOf } from '../naive/table.ts';
import { exitsFrom } from './outcomes.ts';

// C. Mulcahy, Additional Certainties, Card Colm (MAA), February 2008: six values whose pair sums are all different.
describe('two cards told by their sum', () => {
  const FOUR_SETS = [
    [1, 2, 3, 5, 8, 13],
    [1, 2, 3, 7, 10, 13],
    [1, 4, 7, 11, 12, 13],
    [1, 6, 9, 11, 12, 13],
  ];
  const RANKS = 'A 2 3 4 5 6 7 8 9 10 J Q K'.split(' ');
  const verdict = (values: readonly number[]): string => {
    const cards = (suit: string): string => values.map((value) => `${RANKS[value - 1]}${suit}`).join(' ');
    const routine = routineOf(
      `basket: ${cards('H')}, face down\n- box: ${cards('S')}, face down`,
      `1. The spectator takes any 2 cards from the basket to the scales, in secret.
2. Call the value of the top card of the scales J, in secret.
3. Call the value of the bottom card of the scales K, in secret.
4. Add J and K, call the sum S.
5. The spectator says S.
6. You take any 2 cards from the box to the tray.`,
      'The top card of the scales and the top card of the tray agree in value and the bottom card of the scales and the bottom card of the tray agree in value.',
    );
    return decide(routine).verdict;
  };

  test.each(FOUR_SETS.map((set) => [set.join(' '), set] as const))('%s: always', (_words, set) => {
    expect(verdict(set)).toBe('proved');
  });

  test('there are no other six values from 1 to 13', () => {
    const found: number[][] = [];
    const go = (set: readonly number[], sums: ReadonlySet<number>): void => {
      if (set.length === 6) found.push([...set]);
      for (let next = (set.at(-1) ?? 0) + 1; set.length < 6 && next <= 13; next++) {
        const more = set.map((value) => value + next);
        if (more.every((sum) => !sums.has(sum))) go([...set, next], new Set([...sums, ...more]));
      }
    };
    go([], new Set());
    expect(found).toEqual(FOUR_SETS);
    expect(verdict([1, 2, 4, 5, 8, 13])).toBe('refuted');
  });
});

// W. W. Rouse Ball, Mathematical Recreations and Essays, 4th edition, 1905, chapter 1, Fourth Example (after Bachet): n cards, each pile
// counted on from the value of its first card to m; p piles, r cards left: the first cards total (m + 1) p + r - n.
describe('piles counted up to a number', () => {
  const working = `1. Shuffle the packet, keeping every end.
2. Deal 1 card to pile 1.
3. Deal from the value of the bottom card of pile 1 up to 3 from the packet to pile 1.
4. Deal 1 card to pile 2.
5. Deal from the value of the bottom card of pile 2 up to 3 from the packet to pile 2.
6. Count the packet, call the number R.
7. Call R plus N S.`;

  test('what the first cards total follows from how many are left', () => {
    // Six cards, to three, two piles: 4 * 2 + r - 6 = r + 2.
    const text = working.replace('N S.', '2 S.');
    const setUp = 'packet: AS 2S 3S 2H 3H 3C, face down';
    expect(verdictsByBoth(setUp, text, 'The bottom cards of the piles total S.')).toEqual(['proved']);
    const wrong = working.replace('N S.', '3 S.');
    expect(verdictsByBoth(setUp, wrong, 'The bottom cards of the piles total S.')).toEqual(['refuted']);
  });
});

// W. W. Rouse Ball, Mathematical Recreations and Essays, 4th edition, 1905 (after Bachet, problem xvii): ten couples on the equal letters of
// four words; every choice of one row or of two belongs to exactly one couple.
describe('ten couples by four words', () => {
  test.each([
    ['matas', 'dedit', 'nomen', 'cocis'],
    ['mutus', 'nomen', 'dedit', 'cocis'],
  ])('%s %s %s %s', (...words) => {
    const said = words.map((word) => `"${word}"`);
    const table = Array.from({ length: 20 }, (_, i) => i + 1).join(' ');
    const [exit] = exitsFrom(
      table,
      `Lay out the packet by the words ${said.slice(0, 3).join(', ')} and ${said[3]}.`,
    );
    const { names, piles } = exit.moment.table;
    const rowOf = new Map<number, number>();
    names.forEach((name, i) => {
      const row = Number(/^cell (\d+) /.exec(name)?.[1]);
      for (const lies of piles[i]) rowOf.set(cardOf(lies), row);
    });
    expect(rowOf.size).toBe(20);
    const rows = Array.from({ length: 10 }, (_, k) =>
      [rowOf.get(2 * k) ?? 0, rowOf.get(2 * k + 1) ?? 0].sort((a, b) => a - b).join(),
    );
    expect([...rows].sort()).toEqual(['1,1', '1,2', '1,3', '1,4', '2,2', '2,3', '2,4', '3,3', '3,4', '4,4']);
  });

  test('words that do not tell the couples are refused', () => {
    const move = MOVES.find(({ id }) => id === 'lay-by-words');
    const codes = (words: readonly string[]): string[] =>
      (move?.check?.({ pile: 'packet', words }) ?? []).map(({ code }) => code);
    expect(codes(['matas', 'dedit', 'nomen', 'cocis'])).toEqual([]);
    expect(codes(['matas', 'dedit', 'nomen', 'coci'])).toEqual(['not-a-key']);
    expect(codes(['ant', 'tan'])).toEqual(['not-a-key']);
    expect(codes(['anna', 'anna'])).toEqual(['not-a-key']);
  });
});

// N. G. de Bruijn, A combinatorial problem, 1946: of eight cards there are two cycles in which every three colours in a row occur once.
test('of all ways round eight red and black cards, two tell every place by three colours', () => {
  const tells = (colours: string): boolean => {
    const cards = [...colours].map((c, i) => `${'A2345678'[i]}${c === 'r' ? 'H' : 'S'}`).join(' ');
    const look = ['top', '2nd', '3rd']
      .map((place, i) => `${i + 2}. See whether the ${place} card is red, call it ${'JKL'[i]}.`)
      .join('\n');
    const routine = routineOf(
      `packet: ${cards}, face down`,
      `1. Cut the packet, in secret.\n${look}\n5. You transfer 0 to 7 cards from the top to the bottom.`,
      `The top card is the ${cards.split(' ')[0]}.`,
    );
    return decide(routine).verdict === 'proved';
  };
  // Each necklace of four red and four black once: the least of its turns.
  const all = Array.from({ length: 256 }, (_, i) => i.toString(2).padStart(8, '0'))
    .filter((bits) => [...bits].filter((bit) => bit === '1').length === 4)
    .filter((bits) =>
      Array.from({ length: 8 }, (_, k) => bits.slice(k) + bits.slice(0, k)).every((turn) => bits <= turn),
    );
  const found = all.map((bits) => bits.replaceAll('0', 'b').replaceAll('1', 'r')).filter(tells);
  expect(found).toEqual(['bbbrbrrr', 'bbbrrrbr']);
});
