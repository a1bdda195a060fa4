import type { Budget } from '../base/budget.ts';
import { BudgetEnded, type Edge, type Graph } from '../routine/graph.ts';

/** A location with the number of times that a circle was closed on the way there. */
export interface Node {
  readonly id: number;
  readonly location: number;
  readonly rounds: number;
}

export interface Unrolled {
  /** For each depth, the nodes that can stand there. */
  readonly layers: readonly (readonly Node[])[];
  readonly edges: ReadonlyMap<number, readonly { readonly edge: Edge; readonly to: Node }[]>;
  /** True when some way was cut short because it would close a circle once too often. */
  readonly bounded: boolean;
}

/**
 * The graph from a location on as layers without circles: an edge that closes a circle leads to a fresh copy, at most `rounds`
 * times in one performance.
 */
export function unroll(graph: Graph, start: number, rounds: number, budget: Budget): Unrolled {
  const back = backEdges(graph, start, budget);
  const nodes = new Map<string, Node>();
  const node = (location: number, closed: number): Node => {
    const key = `${location}/${closed}`;
    let found = nodes.get(key);
    if (found === undefined) nodes.set(key, (found = { id: nodes.size, location, rounds: closed }));
    return found;
  };
  const edges = new Map<number, { edge: Edge; to: Node }[]>();
  let bounded = false;
  const layers: Node[][] = [[node(start, 0)]];
  for (let layer = layers[0]; layer.length > 0;) {
    const next = new Map<number, Node>();
    for (const at of layer) {
      let ways = edges.get(at.id);
      if (ways === undefined) {
        ways = [];
        for (const edge of graph.waysFrom(at.location, undefined, budget).edges) {
          const closed = at.rounds + (back.has(edge.id) ? 1 : 0);
          if (closed > rounds) bounded = true;
          else ways.push({ edge, to: node(edge.to, closed) });
        }
        edges.set(at.id, ways);
      }
      if (!budget.spend(1 + ways.length * graph.cards)) throw new BudgetEnded();
      for (const { to } of ways) next.set(to.id, to);
    }
    layer = [...next.values()];
    if (layer.length > 0) layers.push(layer);
  }
  return { layers, edges, bounded };
}

/** Edges that lead back to a location whose ways are still being followed, in a depth-first walk. */
function backEdges(graph: Graph, start: number, budget: Budget): Set<number> {
  const back = new Set<number>();
  const state = new Map<number, 'open' | 'done'>();
  const stack: { location: number; edges: readonly Edge[]; next: number }[] = [];
  const open = (location: number): void => {
    state.set(location, 'open');
    stack.push({ location, edges: graph.waysFrom(location, undefined, budget).edges, next: 0 });
  };
  open(start);
  while (stack.length > 0) {
    const top = stack[stack.length - 1];
    if (top.next === top.edges.length) {
      state.set(top.location, 'done');
      stack.pop();
      continue;
    }
    const edge = top.edges[top.next++];
    const known = state.get(edge.to);
    if (known === 'open') back.add(edge.id);
    else if (known === undefined) open(edge.to);
  }
  return back;
}
