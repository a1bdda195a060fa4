import type { Bounded, Ending } from './bounded.ts';

export interface Cnf {
  readonly variables: number;
  readonly clauses: number;
  /** In DIMACS form: satisfiable exactly when some performance within the rounds makes the ending false. */
  readonly text: string;
}

/**
 * A bounded question as clauses. For each depth: which node the performance is at (one variable each), which way on it takes, and
 * each slot's kind, in binary, and face.
 */
export function cnfOf(bounded: Bounded, ending: Ending): Cnf {
  return new Writer(bounded).write(ending);
}

class Writer {
  private readonly parts: string[] = [];
  private variables = 0;
  private clauses = 0;
  private readonly bounded: Bounded;
  private readonly kindBits: number;

  constructor(bounded: Bounded) {
    this.bounded = bounded;
    this.kindBits = Math.max(1, Math.ceil(Math.log2(bounded.kindCount)));
  }

  write(ending: Ending): Cnf {
    const { layers, edges, graph, kinds, up } = this.bounded;
    const slots = kinds.length;
    let bits = kinds.map(() => this.slotBits());
    bits.forEach((of, s) => {
      this.add([up[s] === 1 ? of[0] : -of[0]]);
      for (let k = 0; k < this.kindBits; k++)
        this.add([((kinds[s] >> k) & 1) === 1 ? of[k + 1] : -of[k + 1]]);
    });
    // Where a performance may be now: nodes of the layer, and ends that were reached before, which it does not leave.
    let now = new Map<number, { variable: number; exit: boolean }>();
    now.set(layers[0][0].id, { variable: this.fresh(), exit: graph.locations[layers[0][0].location].exit });
    this.add([[...now.values()][0].variable]);
    for (let t = 0; t + 1 < layers.length; t++) {
      const later = bits.map(() => this.slotBits());
      const next = new Map<number, { variable: number; exit: boolean }>();
      const place = (id: number, exit: boolean): number => {
        let found = next.get(id);
        if (found === undefined) next.set(id, (found = { variable: this.fresh(), exit }));
        return found.variable;
      };
      for (const [id, { variable, exit }] of now) {
        if (exit) {
          const to = place(id, true);
          this.add([-variable, to]);
          for (let s = 0; s < slots; s++) this.carry(variable, bits[s], later[s], 0);
          continue;
        }
        const ways = (edges.get(id) ?? []).map(({ edge, to }) => {
          const way = this.fresh();
          this.add([-way, place(to.id, graph.locations[to.location].exit)]);
          const { from, ops } = edge.effect;
          for (let s = 0; s < slots; s++)
            this.carry(way, bits[from[s]], later[s], ops === null ? 0 : ops[s] & 3);
          return way;
        });
        this.add([-variable, ...ways]);
      }
      bits = later;
      now = next;
    }
    this.add([...now.values()].flatMap(({ variable, exit }) => (exit ? [variable] : [])));
    for (const { variable, exit } of now.values()) if (!exit) this.add([-variable]);
    this.fails(ending, bits);
    return {
      variables: this.variables,
      clauses: this.clauses,
      text: `p cnf ${this.variables} ${this.clauses}\n${this.parts.join('')}`,
    };
  }

  private fresh(): number {
    return ++this.variables;
  }

  private slotBits(): number[] {
    return Array.from({ length: this.kindBits + 1 }, () => this.fresh());
  }

  private add(clause: readonly number[]): void {
    this.parts.push(`${clause.join(' ')} 0\n`);
    this.clauses++;
  }

  /** Where `when` is true, `to` is `from` with the operation on faces done. */
  private carry(when: number, from: readonly number[], to: readonly number[], face: number): void {
    if (face >= 2) this.add([-when, face === 3 ? to[0] : -to[0]]);
    else {
      const was = face === 1 ? -from[0] : from[0];
      this.add([-when, -was, to[0]]);
      this.add([-when, was, -to[0]]);
    }
    for (let k = 1; k < from.length; k++) {
      this.add([-when, -from[k], to[k]]);
      this.add([-when, from[k], -to[k]]);
    }
  }

  /** The ending is false of the last table. */
  private fails(ending: Ending, bits: readonly (readonly number[])[]): void {
    if (ending.says === 'one class one way') {
      const shown = bits.map(([up, kind]) => this.differ(up, kind));
      this.add(shown.slice(1).map((one, i) => this.differ(shown[i], one)));
      return;
    }
    const alike: number[] = [];
    for (let from = 0; from + ending.block <= bits.length; from += ending.block)
      for (let a = from; a < from + ending.block; a++)
        for (let b = a + 1; b < from + ending.block; b++) {
          const same = this.fresh();
          for (let k = 1; k < bits[a].length; k++) {
            this.add([-same, -bits[a][k], bits[b][k]]);
            this.add([-same, bits[a][k], -bits[b][k]]);
          }
          alike.push(same);
        }
    this.add(alike);
  }

  private differ(a: number, b: number): number {
    const other = this.fresh();
    this.add([-other, a, b]);
    this.add([-other, -a, -b]);
    this.add([other, -a, b]);
    this.add([other, a, -b]);
    return other;
  }
}
