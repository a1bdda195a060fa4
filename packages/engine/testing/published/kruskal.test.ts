import { describe, expect, test } from 'vitest';
import { seeded } from '../../src/base/seeded.ts';
import { fullPack } from '../../src/cards/pack.ts';
import type { Card } from '../../src/cards/card.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { chanceOf } from '../../src/proving/chance.ts';
import { DEFAULT_LIMITS, Meanings } from '../../src/proving/question.ts';
import { Budget } from '../../src/base/budget.ts';
import { Graph } from '../../src/routine/graph.ts';
import { startsOf } from '../../src/routine/starts.ts';
import { walkValues } from '../../src/moves/walk-values.ts';
import { START } from '../../src/moves/move.ts';

/**
 * Chances that a walk along the values of a shuffled pack, begun at a place from 1 to 10, ends on the same card as another: one begun
 * anywhere there, or at the first card. Recomputed for these tests (two programs, 3 x 10^7 packs and more, standard error at most 0.0001),
 * in keeping with C. Mulcahy, Predictability Outranks Luck, 2012 (about 5/6) and with J. C. Lagarias, E. Rains and R. J. Vanderbei, The
 * Kruskal count, 2001 (about 85 in 100, from memory), both for courts that count 5. The figures hold within 0.001; to that comes what our
 * own packs, fewer by far, leave to chance: three standard errors, reckoned from the packs themselves.
 */
const FIGURES: readonly [courts: number, random: number, first: number][] = [
  [5, 0.84168, 0.85351],
  [10, 0.7076, 0.7218],
  [1, 0.9369, 0.9425],
];
const PACKS = 100_000;
const TOLERANCE = 0.001;

/** Mean of numbers met one by one, and its standard error. */
class Mean {
  private n = 0;
  private sum = 0;
  private squares = 0;

  add(value: number): void {
    this.n++;
    this.sum += value;
    this.squares += value * value;
  }

  get value(): number {
    return this.sum / this.n;
  }

  get error(): number {
    return Math.sqrt((this.squares / this.n - this.value ** 2) / this.n);
  }
}

test.each(FIGURES)(
  'courts counting %i: %d from anywhere, %d from the first card',
  (courts, random, first) => {
    const dice = seeded(1);
    const cards: Card[] = [...fullPack()];
    const view = { layout: { names: ['packet'], sizes: [52] }, phase: START, numbers: {}, seen: undefined };
    const table = { layout: view.layout, cardAt: (_: string, place: number) => cards[place], bitAt: () => 0 };
    const anywhere = new Mean();
    const fromFirst = new Mean();
    for (let pack = 0; pack < PACKS; pack++) {
      for (let k = cards.length - 1; k > 0; k--) {
        const other = Math.floor(dice() * (k + 1));
        [cards[k], cards[other]] = [cards[other], cards[k]];
      }
      const ends = Array.from({ length: 10 }, (_, s) =>
        walkValues.looks?.observe(
          { pile: 'packet', at: { end: 'top', n: s + 1 }, courts, mark: 'target' },
          table,
          view,
        ),
      );
      // All ten places of the spectator's, and all of the performer's, are equally likely.
      const asFirst = ends.filter((end) => end === ends[0]).length;
      const alike = ends.reduce<number>((sum, end) => sum + ends.filter((other) => other === end).length, 0);
      fromFirst.add(asFirst / 10);
      anywhere.add(alike / 100);
    }
    expect(anywhere.error).toBeLessThan(0.0015);
    expect(Math.abs(anywhere.value - random)).toBeLessThan(TOLERANCE + 3 * anywhere.error);
    expect(Math.abs(fromFirst.value - first)).toBeLessThan(TOLERANCE + 3 * fromFirst.error);
  },
);

describe('the same as a note', () => {
  test('the chance is estimated around the figure', () => {
    const { routine } = compile(
      read(`## Set-up
- packet: full pack in any order, face down
## Working
1. The spectator thinks of a number from 1 to 10, call it N.
2. Walk along the packet by values from the Nth card, courts counting 5, call the last card reached chosen.
3. Walk along the packet by values from the 1st card, courts counting 5, call the last card reached target.
## Ending
- With probability at least 0.5, the chosen card is target.
`),
    );
    if (routine === undefined) throw new Error('not read');
    const graph = new Graph(routine);
    const starts = startsOf(routine);
    const question = { graph, starts, limits: DEFAULT_LIMITS, budget: new Budget(DEFAULT_LIMITS.work) };
    const meanings = new Meanings(routine.endings[0].sentence, question);
    const chance = chanceOf(question, meanings, { states: 200, runs: 1500, seed: 3 });
    if (chance.kind !== 'estimate') throw new Error(`a chance that is ${chance.kind}`);
    expect(chance.runs).toBe(1500);
    expect(chance.low).toBeLessThan(0.85351);
    expect(chance.high).toBeGreaterThan(0.85351);
  });
});
