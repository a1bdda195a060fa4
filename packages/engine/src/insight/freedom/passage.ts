import type { Vector } from '../../base/echelon.ts';
import type { Family } from '../altering/probed.ts';
import type { Whole } from '../altering/whole.ts';

/** What arrives at a moment and what is needed from there on, laid out so that a rearrangement in between is judged quickly. */
export interface Passage {
  /** Whether every table, rearranged so, satisfies every row. */
  allows(effect: Whole): boolean;
}

/** Tables are turned into columns, and rows into the entries that are not zero: an entry after the rearrangement is one before it. */
export function passageFor(family: Family, tables: readonly Vector[], rows: readonly Vector[]): Passage {
  if (tables.length === 0 || rows.length === 0) return { allows: () => true };
  return family.problem.p === 2 ? new Passage2(family, tables, rows) : new PassageP(family, tables, rows);
}

interface Row {
  readonly entries: Int32Array;
  readonly weights: Int32Array;
}

function sparse({ kernel, problem }: Family, rows: readonly Vector[]): Row[] {
  return rows.map((row) => {
    const entries: number[] = [];
    for (let i = 0; i < problem.width; i++) if (kernel.entry(row, i) !== 0) entries.push(i);
    return {
      entries: Int32Array.from(entries),
      weights: Int32Array.from(entries, (i) => kernel.entry(row, i)),
    };
  });
}

/** Over two elements: a column is a bit for each table. */
class Passage2 implements Passage {
  private readonly family: Family;
  private readonly words: number;
  private readonly columns: Int32Array;
  private readonly rows: Row[];
  private readonly fixed: number;

  constructor(family: Family, tables: readonly Vector[], rows: readonly Vector[]) {
    const { problem, kernel } = family;
    this.family = family;
    this.words = (tables.length + 31) >>> 5;
    this.columns = new Int32Array(problem.width * this.words);
    tables.forEach((table, t) => {
      for (let i = 0; i < problem.width; i++)
        if (kernel.entry(table, i) !== 0) this.columns[i * this.words + (t >>> 5)] |= 1 << (t & 31);
    });
    this.rows = sparse(family, rows);
    this.fixed = problem.width - problem.m;
  }

  allows(effect: Whole): boolean {
    const { rows, words } = this;
    for (let r = 0; r < rows.length; r++)
      for (let w = 0; w < words; w++)
        if (this.sum(rows[r].entries, effect, w) !== 0) {
          // What refutes one rearrangement is likely to refute the next.
          if (r > 0) [rows[r], rows[r - 1]] = [rows[r - 1], rows[r]];
          return false;
        }
    return true;
  }

  private sum(entries: Int32Array, { from, ops }: Whole, word: number): number {
    const { columns, words, fixed } = this;
    const { d, space } = this.family.problem;
    let sum = 0;
    for (let e = 0; e < entries.length; e++) {
      const i = entries[e];
      if (i >= fixed) {
        sum ^= columns[i * words + word];
        continue;
      }
      const s = d === 1 ? i : (i / d) | 0;
      const op = ops === null ? 0 : ops[s];
      if (op === 0) sum ^= columns[(from[s] * d + i - s * d) * words + word];
      else {
        const map = space.under(op)[i - s * d];
        for (let j = 0; j < d; j++)
          if ((map.columns[j] & 1) !== 0) sum ^= columns[(from[s] * d + j) * words + word];
        if ((map.constant & 1) !== 0) sum ^= columns[fixed * words + word];
      }
    }
    return sum;
  }
}

/** Over p elements: a column is a number for each table. */
class PassageP implements Passage {
  private readonly family: Family;
  private readonly count: number;
  private readonly columns: Int32Array;
  private readonly rows: Row[];
  private readonly fixed: number;
  private readonly sums: Int32Array;

  constructor(family: Family, tables: readonly Vector[], rows: readonly Vector[]) {
    const { problem, kernel } = family;
    this.family = family;
    this.count = tables.length;
    this.columns = new Int32Array(problem.width * this.count);
    tables.forEach((table, t) => {
      for (let i = 0; i < problem.width; i++) this.columns[i * this.count + t] = kernel.entry(table, i);
    });
    this.rows = sparse(family, rows);
    this.fixed = problem.width - problem.m;
    this.sums = new Int32Array(this.count);
  }

  allows(effect: Whole): boolean {
    const { rows } = this;
    for (let r = 0; r < rows.length; r++) {
      this.sum(rows[r], effect);
      if (this.sums.every((sum) => sum === 0)) continue;
      if (r > 0) [rows[r], rows[r - 1]] = [rows[r - 1], rows[r]];
      return false;
    }
    return true;
  }

  private sum({ entries, weights }: Row, { from, ops }: Whole): void {
    const { fixed, sums } = this;
    const { d, space } = this.family.problem;
    sums.fill(0);
    for (let e = 0; e < entries.length; e++) {
      const i = entries[e];
      const s = Math.floor(i / d);
      const op = i >= fixed || ops === null ? 0 : ops[s];
      if (i >= fixed) this.add(i, weights[e]);
      else if (op === 0) this.add(from[s] * d + i - s * d, weights[e]);
      else {
        const map = space.under(op)[i - s * d];
        for (let j = 0; j < d; j++)
          if (map.columns[j] !== 0) this.add(from[s] * d + j, weights[e] * map.columns[j]);
        if (map.constant !== 0) this.add(fixed, weights[e] * map.constant);
      }
    }
  }

  private add(entry: number, weight: number): void {
    const { columns, count, sums } = this;
    const { p } = this.family.problem;
    const w = weight % p;
    for (let t = 0; t < count; t++) sums[t] = (sums[t] + w * columns[entry * count + t]) % p;
  }
}
