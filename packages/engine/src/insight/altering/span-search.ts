import { echelonOver, type Echelon, type Vector } from '../../base/echelon.ts';
import type { Family } from './probed.ts';

interface Node {
  readonly basis: Echelon;
  readonly kept: Vector[];
}

/** Vectors spread over the nodes of a graph, each node keeping those that are independent of what it has. */
export class SpanSearch {
  private readonly nodes = new Map<number, Node>();
  private readonly waiting: { readonly at: number; readonly vector: Vector }[] = [];
  private readonly scratch: Vector;
  private readonly family: Family;

  constructor(family: Family) {
    this.family = family;
    this.scratch = family.kernel.zero();
  }

  /** A vector for a node; it is copied if it is new there. */
  add(at: number, vector: Vector): void {
    const { problem } = this.family;
    let node = this.nodes.get(at);
    if (node === undefined)
      this.nodes.set(at, (node = { basis: echelonOver(problem.p, problem.width), kept: [] }));
    if (node.basis.rank === problem.width) return;
    this.scratch.set(vector);
    if (!node.basis.insert(this.scratch)) return;
    const kept = vector.slice();
    node.kept.push(kept);
    this.waiting.push({ at, vector: kept });
  }

  /** A basis of all that came to a node. */
  at(node: number): readonly Vector[] {
    return this.nodes.get(node)?.kept ?? [];
  }

  /** Hands on every vector that was new at its node; false as soon as `visit` says so. */
  run(visit: (at: number, vector: Vector) => boolean | void): boolean {
    for (let next = this.waiting.pop(); next !== undefined; next = this.waiting.pop())
      if (visit(next.at, next.vector) === false) return false;
    return true;
  }
}
