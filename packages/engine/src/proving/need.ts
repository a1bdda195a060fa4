import type { Budget } from '../base/budget.ts';
import { echelonOver, type Echelon, type Vector } from '../base/echelon.ts';
import { CostQueue } from '../base/heap.ts';
import { BudgetEnded, type Edge, type Graph } from '../routine/graph.ts';
import { Kept, Waiting } from './kept.ts';
import type { Kernel } from './kernel.ts';
import type { Problem } from './problem.ts';
import type { Region } from './region.ts';

/** What must be true at each location for the ending to be certain: the weakest requirement, as a basis of equations. */
export interface Need {
  /** Equations, cheapest way to the exit first; parent and edge lead towards the exit, -1 there. */
  readonly rows: Kept;
  /** Numbers of the rows at a location, cheapest first. */
  readonly at: readonly (readonly number[] | undefined)[];
  readonly bases: readonly (Echelon | undefined)[];
  /** False when the search was stopped early because `until` said so. */
  readonly complete: boolean;
}

/**
 * Pulls the ending's equations back along every edge, cheapest way first, keeping at each location only what is linearly
 * independent of what is kept there. Because the filter acts when a row is taken from the queue, a start that violates the
 * need violates a kept row whose way to the exit is a shortest failure.
 * @param until stops the search when it returns true for a row just kept
 */
export function needOf(
  problem: Problem,
  kernel: Kernel,
  graph: Graph,
  region: Region,
  budget: Budget,
  until?: (location: number, vector: Vector, cost: number, number: number) => boolean,
): Need {
  const scratch = kernel.zero();
  const vector = kernel.zero();
  const later = kernel.zero();
  const rows = new Kept(scratch);
  const at: number[][] = [];
  const bases: Echelon[] = [];
  const queue = new CostQueue();
  const waiting = new Waiting();
  problem.rows.forEach((_, i) => queue.push(waiting.add(-1, i), 0));
  while (queue.size > 0) {
    const cost = queue.nextCost();
    const item = queue.pop();
    const edge = waiting.edge(item);
    const origin = waiting.origin(item);
    let location: number;
    if (edge < 0) {
      const row = problem.rows[origin];
      vector.set(kernel.ofRow(row));
      location = row.exit;
    } else {
      const along = graph.edges[edge];
      location = along.from;
      // A location that needs everything needs nothing more.
      if (bases[location]?.rank === problem.width) continue;
      rows.read(origin, later);
      kernel.pull(later, along, vector);
    }
    if (!budget.spend()) throw new BudgetEnded('budget ended while working back from the ending');
    const basis = (bases[location] ??= echelonOver(problem.p, problem.width));
    scratch.set(vector);
    if (!basis.insert(scratch)) continue;
    const number = rows.add(vector, location, edge < 0 ? -1 : origin, edge, cost);
    (at[location] ??= []).push(number);
    if (until?.(location, vector, cost, number) === true) return { rows, at, bases, complete: false };
    for (const before of region.into[location] ?? [])
      queue.push(waiting.add(before.id, number), cost + before.cost);
  }
  return { rows, at, bases, complete: true };
}

/** The edges from a row's location to the exit whose equation it is. */
export function pathOf(need: Need, graph: Graph, row: number): Edge[] {
  const path: Edge[] = [];
  for (let at = row; need.rows.edge[at] >= 0; at = need.rows.parent[at])
    path.push(graph.edges[need.rows.edge[at]]);
  return path;
}
