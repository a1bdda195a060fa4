import type { Budget } from '../base/budget.ts';
import type { Edge, Graph } from '../routine/graph.ts';

/** The part of the graph that can be reached from some locations without meeting a look at cards, with its edges both ways. */
export interface Region {
  readonly entries: readonly number[];
  /** Locations in order of discovery. */
  readonly order: readonly number[];
  readonly exits: readonly number[];
  readonly stuck: readonly number[];
  /** Edges into a location, by location number. */
  readonly into: readonly (readonly Edge[] | undefined)[];
  /** All operations on bits that occur. */
  readonly ops: readonly number[];
  readonly edges: number;
}

export function regionFrom(graph: Graph, entries: readonly number[], budget: Budget): Region {
  const order = graph.reach(entries, budget);
  const into: Edge[][] = [];
  const ops = new Set<number>();
  const seenOps = new Set<Uint32Array>();
  const exits: number[] = [];
  const stuck: number[] = [];
  let edges = 0;
  for (const id of order) {
    into[id] ??= [];
    const location = graph.locations[id];
    if (location.exit) exits.push(id);
    if (location.looks) continue;
    const ways = graph.waysFrom(id, undefined, budget);
    if (ways.stuck !== undefined) stuck.push(id);
    for (const edge of ways.edges) {
      edges++;
      (into[edge.to] ??= []).push(edge);
      const found = edge.effect.ops;
      if (found !== null && !seenOps.has(found)) {
        seenOps.add(found);
        for (const op of found) ops.add(op);
      }
    }
  }
  return { entries, order, exits, stuck, into, ops: [...ops], edges };
}
