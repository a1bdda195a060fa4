import { describe, expect, test } from 'vitest';
import { seeded } from '../src/base/seeded.ts';
import { compile } from '../src/note/compile.ts';
import { read } from '../src/note/read.ts';
import { Stage } from '../src/report/stage.ts';

/** How often each order of the packet came about in so many random performances; cards with what can be seen of them. */
function played(setUp: string, working: string, runs: number): Map<string, number> {
  const text = `## Set-up\n- packet: ${setUp}\n## Working\n${working}\n## Ending\n- All cards are face down.\n`;
  const { routine } = compile(read(text));
  if (routine === undefined) throw new Error(text);
  const stage = new Stage(routine, text);
  const random = seeded(5);
  const found = new Map<string, number>();
  for (let run = 0; run < runs; run++) {
    const [packet] = stage.table(stage.randomly(random)).piles;
    found.set(packet.text, (found.get(packet.text) ?? 0) + 1);
  }
  return found;
}

describe('a free shuffle at random', () => {
  test.each([
    ['AS 2S 3S 4S, face down', '1. Shuffle the packet, keeping every end.', 24],
    ['AS 2S 3S, face down', '1. Wash the packet, turning cards as they like, keeping every end.', 48],
    ['AS 2S 3S 4S 5S 6S, face down', '1. Shuffle the order of the pairs.', 6],
    ['AS 2S 3S 4S 5S 6S, face down', '1. Shuffle within each block of 3 cards.', 36],
    ['AS 2S 3S 4S 5S, face down', '1. Shuffle the top 3 cards, keeping every end.', 6],
  ])('%s %s: each of %i results as often as any other', (setUp, working, results) => {
    const runs = 200 * results;
    const found = played(setUp, working, runs);
    expect(found.size).toBe(results);
    // Chi-square with `results - 1` degrees; five standard deviations above its mean.
    const off = [...found.values()].reduce((sum, n) => sum + (n - 200) ** 2 / 200, 0);
    expect(off).toBeLessThan(results - 1 + 5 * Math.sqrt(2 * (results - 1)));
  });

  test('two shuffles one after the other are two, and a cut before keeps its own chances', () => {
    const found = played(
      'AS 2S 3S, face down',
      '1. Cut the packet.\n2. Shuffle the packet, keeping every end.\n3. Cut the packet at 1.',
      1200,
    );
    expect(found.size).toBe(6);
    for (const n of found.values()) expect(n).toBeGreaterThan(140);
  });
});

// Every one of the 2^n ways to let n cards fall is as likely; the order of the start comes about in n + 1 of them.
test('a riffle at random leaves the packet as it was so often as falls do', () => {
  const runs = 4000;
  const found = played('AS 2S 3S 4S, face down', '1. Riffle the packet.', runs);
  expect(found.size).toBe(2 ** 4 - 4);
  const wanted = (runs * 5) / 16;
  expect(Math.abs((found.get('AS 2S 3S 4S') ?? 0) - wanted)).toBeLessThan(5 * Math.sqrt(wanted));
});
