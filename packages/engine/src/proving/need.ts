import type { Budget } from '../base/budget.ts';
import { echelonOver, type Echelon, type Vector } from '../base/echelon.ts';
import { CostQueue } from '../base/heap.ts';
import { BudgetEnded, type Edge } from '../routine/graph.ts';
import type { Kernel } from './kernel.ts';
import type { Problem } from './problem.ts';
import type { Region } from './region.ts';

/** An equation that must hold at a location, kept because it does not follow from cheaper ones there. */
export interface NeedRow {
  readonly location: number;
  readonly vector: Vector;
  /** Cost of the way from here to the exit whose equation this is. */
  readonly cost: number;
  /** The edge it was pulled back along and the row it came from; -1 at an exit. */
  readonly edge: Edge | undefined;
  readonly parent: number;
}

/** What must be true at each location for the ending to be certain: the weakest requirement, as a basis of equations. */
export interface Need {
  readonly rows: readonly NeedRow[];
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
  region: Region,
  budget: Budget,
  until?: (row: NeedRow) => boolean,
): Need {
  const rows: NeedRow[] = [];
  const at: number[][] = [];
  const bases: Echelon[] = [];
  const queue = new CostQueue();
  // What waits: an edge and the kept row to pull back along it, or a row of the ending itself.
  const waitEdge: (Edge | undefined)[] = [];
  const waitRow: number[] = [];
  const wait = (edge: Edge | undefined, row: number, cost: number): void => {
    queue.push(waitEdge.length, cost);
    waitEdge.push(edge);
    waitRow.push(row);
  };
  problem.rows.forEach((_, i) => wait(undefined, i, 0));
  const scratch = kernel.zero();
  const pulled = kernel.zero();
  while (queue.size > 0) {
    const cost = queue.nextCost();
    const item = queue.pop();
    const edge = waitEdge[item];
    let vector: Vector;
    let location: number;
    if (edge === undefined) {
      const row = problem.rows[waitRow[item]];
      vector = kernel.ofRow(row);
      location = row.exit;
    } else {
      vector = pulled;
      kernel.pull(rows[waitRow[item]].vector, edge, vector);
      location = edge.from;
    }
    if (!budget.spend()) throw new BudgetEnded('budget ended while working back from the ending');
    const basis = (bases[location] ??= echelonOver(problem.p, problem.width));
    scratch.set(vector);
    if (!basis.insert(scratch)) continue;
    const row: NeedRow = { location, vector: vector.slice(), cost, edge, parent: edge === undefined ? -1 : waitRow[item] };
    const number = rows.push(row) - 1;
    (at[location] ??= []).push(number);
    if (until?.(row) === true) return { rows, at, bases, complete: false };
    for (const before of region.into[location] ?? []) wait(before, number, cost + before.cost);
  }
  return { rows, at, bases, complete: true };
}
