/**
 * Decisions of a generator, read off a list of numbers that fast-check makes and makes smaller: zeros, and what lies beyond
 * the end of the list, ask for the first and simplest of everything.
 */
export class Dice {
  private readonly rolls: readonly number[];
  private at = 0;

  constructor(rolls: readonly number[]) {
    this.rolls = rolls;
  }

  /** 0 to n - 1. */
  below(n: number): number {
    const roll = this.at < this.rolls.length ? this.rolls[this.at++] : 0;
    return n <= 1 ? 0 : roll % n;
  }

  /** True this many times in a hundred. */
  chance(percent: number): boolean {
    return this.below(100) >= 100 - percent;
  }

  of<T>(list: readonly T[]): T {
    if (list.length === 0) throw new Error('nothing to choose from');
    return list[this.below(list.length)];
  }

  /** Indexes are drawn as often as their weights say. */
  weighted(weights: readonly number[]): number {
    let roll = this.below(weights.reduce((sum, weight) => sum + weight, 0));
    return weights.findIndex((weight) => (roll -= weight) < 0);
  }
}
