import { describe, expect, test } from 'vitest';
import { layoutOfTable, parseTable, printTable, readAs, act, type Table } from '../../testing/packets.ts';
import { MOVES } from './index.ts';
import { isStuck, START, type Move, type Phase } from './move.ts';
import type { Args } from '../phrases/values.ts';

/** Each packet that a sentence leads to with its chance, every choice made by its weight. */
function chances(before: string, sentence: string): Map<string, number> {
  const [[move, args]] = MOVES.flatMap((one) => readAs(one, sentence).map((a): [Move, Args] => [one, a]));
  const found = new Map<string, number>();
  const walk = (table: Table, phase: Phase, chance: number): void => {
    const options = move.options(args, { layout: layoutOfTable(table), phase, numbers: {}, seen: undefined });
    if (isStuck(options)) throw new Error(options.stuck.code);
    const total = options.reduce((sum, { weight }) => sum + (weight ?? 1), 0);
    for (const { actions, next, weight } of options) {
      const after = actions.reduce(act, table);
      const share = (chance * (weight ?? 1)) / total;
      if (next !== null) walk(after, next, share);
      else found.set(printTable(after), (found.get(printTable(after)) ?? 0) + share);
    }
  };
  walk(parseTable(before), START, 1);
  return found;
}

// G. Bayer, P. Diaconis, Trailing the dovetail shuffle to its lair, Annals of Applied Probability 2 (1992), theorem 1, from memory:
// one riffle gives an order with r rising sequences the chance C(2 + n - r, n) / 2^n.
describe('a riffle by its weights', () => {
  test.each([1, 2, 3, 4, 5, 6])('%i cards', (n) => {
    const start = Array.from({ length: n }, (_, i) => i + 1).join(' ');
    const found = chances(start, 'Riffle the packet.');
    expect(found.size).toBe(2 ** n - n);
    for (const [order, chance] of found) expect(chance * 2 ** n).toBeCloseTo(order === start ? n + 1 : 1, 9);
  });
});

test('two packets fall into each other so that every interleaving is as likely', () => {
  const found = chances('packet: 1 2 3; table: 4 5', 'Riffle the packet and the table together.');
  expect(found.size).toBe(10);
  for (const chance of found.values()) expect(chance).toBeCloseTo(1 / 10, 9);
});
