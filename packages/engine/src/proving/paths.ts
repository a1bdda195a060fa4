import type { Budget } from '../base/budget.ts';
import { CostQueue } from '../base/heap.ts';
import type { Edge, Graph } from '../routine/graph.ts';
import type { Region } from './region.ts';

/** The cheapest way from some locations to any of the targets, by edges whose ways do not depend on cards. */
export function cheapestPath(
  graph: Graph,
  from: readonly { readonly location: number; readonly cost: number }[],
  isTarget: (location: number) => boolean,
  budget: Budget,
): { readonly entry: number; readonly path: readonly Edge[]; readonly cost: number } | undefined {
  const queue = new CostQueue();
  const cost: number[] = [];
  const via: (Edge | undefined)[] = [];
  const entry: number[] = [];
  from.forEach((start, i) => {
    if (cost[start.location] !== undefined && cost[start.location] <= start.cost) return;
    cost[start.location] = start.cost;
    entry[start.location] = i;
    via[start.location] = undefined;
    queue.push(start.location, start.cost);
  });
  const done = new Set<number>();
  while (queue.size > 0) {
    const location = queue.pop();
    if (done.has(location)) continue;
    done.add(location);
    if (isTarget(location)) {
      const path: Edge[] = [];
      let at = location;
      for (let edge = via[at]; edge !== undefined; edge = via[at]) {
        path.push(edge);
        at = edge.from;
      }
      return { entry: entry[at], path: path.reverse(), cost: cost[location] };
    }
    if (graph.locations[location].looks) continue;
    for (const edge of graph.waysFrom(location, undefined, budget).edges) {
      const through = cost[location] + edge.cost;
      if (cost[edge.to] !== undefined && cost[edge.to] <= through) continue;
      cost[edge.to] = through;
      via[edge.to] = edge;
      queue.push(edge.to, through);
    }
  }
  return undefined;
}

/**
 * How many performances there are from the entry: ways through the region to an exit or a dead end. Null when there is a
 * repetition without end, so that there is no such number. Filling in the set-up is not counted.
 */
export function countPerformances(graph: Graph, region: Region): bigint | null {
  const ways = new Map<number, bigint>();
  const state = new Map<number, 'open' | 'done'>();
  for (const entry of region.entries) {
    const stack: { location: number; edges: readonly Edge[]; next: number; sum: bigint }[] = [];
    const open = (location: number): void => {
      state.set(location, 'open');
      const found = graph.locations[location].looks ? [] : graph.waysFrom(location).edges;
      const edges = graph.locations[location].at < 0 ? found.filter((edge) => edge.to !== location) : found;
      stack.push({ location, edges, next: 0, sum: edges.length === 0 ? 1n : 0n });
    };
    if (!state.has(entry)) open(entry);
    while (stack.length > 0) {
      const top = stack[stack.length - 1];
      if (top.next === top.edges.length) {
        ways.set(top.location, top.sum);
        state.set(top.location, 'done');
        stack.pop();
        continue;
      }
      const to = top.edges[top.next].to;
      const known = state.get(to);
      if (known === 'open') return null;
      if (known === 'done') {
        top.sum += ways.get(to) as bigint;
        top.next++;
      } else open(to);
    }
  }
  return region.entries.reduce((sum, entry) => sum + (ways.get(entry) ?? 0n), 0n);
}
