import type { Vector } from '../base/echelon.ts';
import type { Edge } from '../routine/graph.ts';
import type { TableSlots } from '../routine/starts.ts';
import type { Member, Problem, Row } from './problem.ts';
import type { OpMap } from './space.ts';

/**
 * Vectors of one problem: rows (equations) travel backward along edges, tables forward. Entry slot * d + column is a column at a
 * slot, the last m entries are constants, the first of which is 1.
 */
export interface Kernel {
  /** Typed-array elements in a vector. */
  readonly length: number;
  zero(): Vector;
  ofRow(row: Row): Vector;
  ofTable(member: Member, table: TableSlots): Vector;
  /** The equation that must hold before the edge for `row` to hold after it. */
  pull(row: Vector, edge: Edge, into: Vector): void;
  /** The table after the edge. */
  push(table: Vector, edge: Edge, into: Vector): void;
  /** Left side minus right side; 0 when the equation holds. */
  value(row: Vector, table: Vector): number;
  entry(vector: Vector, index: number): number;
}

export function kernelFor(problem: Problem, slots: number): Kernel {
  return problem.p === 2 ? new Kernel2(problem, slots) : new KernelP(problem, slots);
}

class Kernel2 implements Kernel {
  readonly length: number;
  private readonly problem: Problem;
  private readonly fixed: number;

  constructor(problem: Problem, slots: number) {
    this.problem = problem;
    this.fixed = slots * problem.d;
    this.length = Math.max(1, (problem.width + 31) >>> 5);
  }

  zero(): Vector {
    return new Uint32Array(this.length);
  }

  ofRow(row: Row): Vector {
    const v = this.zero();
    for (const [i, w] of row.weights) if ((w & 1) === 1) v[i >>> 5] ^= 1 << (i & 31);
    row.constants.forEach((c, j) => this.flip(v, this.fixed + j, c));
    return v;
  }

  ofTable(member: Member, table: TableSlots): Vector {
    const v = this.zero();
    const { d } = this.problem;
    for (let s = 0; s < table.cards.length; s++) {
      const values = member.space.valuesOf(table.cards[s], table.bits[s]);
      for (let k = 0; k < d; k++) this.flip(v, s * d + k, values[k]);
    }
    member.constants.forEach((c, j) => this.flip(v, this.fixed + j, c));
    return v;
  }

  pull(row: Vector, edge: Edge, into: Vector): void {
    const { from, ops } = edge.effect;
    const { fixed } = this;
    const { d, space } = this.problem;
    into.fill(0);
    for (let w = 0; w < this.length; w++) {
      let word = row[w] | 0;
      while (word !== 0) {
        const low = word & -word;
        word ^= low;
        const i = (w << 5) + 31 - Math.clz32(low);
        if (i >= fixed) {
          into[i >>> 5] ^= 1 << (i & 31);
          continue;
        }
        const s = d === 1 ? i : (i / d) | 0;
        const op = ops === null ? 0 : ops[s];
        if (op === 0) {
          const to = d === 1 ? from[s] : from[s] * d + (i - s * d);
          into[to >>> 5] ^= 1 << (to & 31);
        } else {
          const { columns, constant } = space.under(op)[i - s * d];
          for (let j = 0; j < d; j++) this.flip(into, from[s] * d + j, columns[j]);
          this.flip(into, fixed, constant);
        }
      }
    }
  }

  push(table: Vector, edge: Edge, into: Vector): void {
    const { from, ops } = edge.effect;
    const { d, space, m } = this.problem;
    into.fill(0);
    for (let s = 0; s < from.length; s++) {
      const op = ops === null ? 0 : ops[s];
      const map: OpMap | null = op === 0 ? null : space.under(op);
      for (let k = 0; k < d; k++) {
        if (map === null) this.flip(into, s * d + k, this.entry(table, from[s] * d + k));
        else {
          let value = map[k].constant;
          for (let j = 0; j < d; j++) value ^= map[k].columns[j] & this.entry(table, from[s] * d + j);
          this.flip(into, s * d + k, value);
        }
      }
    }
    for (let j = 0; j < m; j++) this.flip(into, this.fixed + j, this.entry(table, this.fixed + j));
  }

  value(row: Vector, table: Vector): number {
    let word = 0;
    for (let w = 0; w < this.length; w++) word ^= row[w] & table[w];
    word ^= word >>> 16;
    word ^= word >>> 8;
    word ^= word >>> 4;
    word ^= word >>> 2;
    word ^= word >>> 1;
    return word & 1;
  }

  entry(vector: Vector, i: number): number {
    return (vector[i >>> 5] >>> (i & 31)) & 1;
  }

  private flip(v: Vector, i: number, value: number): void {
    if ((value & 1) === 1) v[i >>> 5] ^= 1 << (i & 31);
  }
}

class KernelP implements Kernel {
  readonly length: number;
  private readonly problem: Problem;
  private readonly fixed: number;

  constructor(problem: Problem, slots: number) {
    this.problem = problem;
    this.fixed = slots * problem.d;
    this.length = problem.width;
  }

  zero(): Vector {
    return new Int32Array(this.length);
  }

  ofRow(row: Row): Vector {
    const v = this.zero();
    for (const [i, w] of row.weights) v[i] = w;
    row.constants.forEach((c, j) => (v[this.fixed + j] = c));
    return v;
  }

  ofTable(member: Member, table: TableSlots): Vector {
    const v = this.zero();
    const { d } = this.problem;
    for (let s = 0; s < table.cards.length; s++) {
      const values = member.space.valuesOf(table.cards[s], table.bits[s]);
      for (let k = 0; k < d; k++) v[s * d + k] = values[k];
    }
    member.constants.forEach((c, j) => (v[this.fixed + j] = c));
    return v;
  }

  pull(row: Vector, edge: Edge, into: Vector): void {
    const { from, ops } = edge.effect;
    const { d, p, space } = this.problem;
    into.fill(0);
    for (let s = 0; s < from.length; s++) {
      const op = ops === null ? 0 : ops[s];
      const map = op === 0 ? null : space.under(op);
      for (let k = 0; k < d; k++) {
        const w = row[s * d + k];
        if (w === 0) continue;
        const to = from[s] * d;
        if (map === null) into[to + k] = (into[to + k] + w) % p;
        else {
          const { columns, constant } = map[k];
          for (let j = 0; j < d; j++) into[to + j] = (into[to + j] + w * columns[j]) % p;
          into[this.fixed] = (into[this.fixed] + w * constant) % p;
        }
      }
    }
    for (let j = this.fixed; j < this.length; j++) into[j] = (into[j] + row[j]) % p;
  }

  push(table: Vector, edge: Edge, into: Vector): void {
    const { from, ops } = edge.effect;
    const { d, p, space } = this.problem;
    for (let s = 0; s < from.length; s++) {
      const op = ops === null ? 0 : ops[s];
      const map = op === 0 ? null : space.under(op);
      const at = from[s] * d;
      for (let k = 0; k < d; k++) {
        if (map === null) into[s * d + k] = table[at + k];
        else {
          let value = map[k].constant;
          for (let j = 0; j < d; j++) value = (value + map[k].columns[j] * table[at + j]) % p;
          into[s * d + k] = value;
        }
      }
    }
    for (let j = this.fixed; j < this.length; j++) into[j] = table[j];
  }

  value(row: Vector, table: Vector): number {
    const { p } = this.problem;
    let sum = 0;
    for (let i = 0; i < this.length; i++) sum = (sum + row[i] * table[i]) % p;
    return sum;
  }

  entry(vector: Vector, i: number): number {
    return vector[i];
  }
}
