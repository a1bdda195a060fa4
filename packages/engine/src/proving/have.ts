import type { Budget } from '../base/budget.ts';
import { echelonOver, type Echelon, type Vector } from '../base/echelon.ts';
import { CostQueue } from '../base/heap.ts';
import { BudgetEnded, type Edge, type Graph } from '../routine/graph.ts';
import type { Kernel } from './kernel.ts';
import type { Problem } from './problem.ts';

/** A table that is really reached, kept because its vector is independent of cheaper ones at its location. */
export interface HaveTable {
  readonly location: number;
  readonly vector: Vector;
  readonly cost: number;
  readonly edge: Edge | undefined;
  /** Number of the kept table before the edge; at an entry -1 - (index of the entry vector). */
  readonly parent: number;
}

/** What is certainly true at each location: exactly the equations that hold on all kept tables there. */
export interface Have {
  readonly tables: readonly HaveTable[];
  readonly at: readonly (readonly number[] | undefined)[];
  readonly bases: readonly (Echelon | undefined)[];
}

export interface Entry {
  readonly location: number;
  readonly vector: Vector;
  readonly cost: number;
}

/**
 * Explores from the entries, cheapest first, keeping a table only if its vector is linearly independent of those kept at its
 * location: edges are affine, so what is dropped can break no equation that the kept ones obey.
 * Sound and complete for affine relations (Karr 1976; Mueller-Olm and Seidl 2004).
 */
export function haveOf(
  problem: Problem,
  kernel: Kernel,
  graph: Graph,
  entries: readonly Entry[],
  budget: Budget,
): Have {
  const tables: HaveTable[] = [];
  const at: number[][] = [];
  const bases: Echelon[] = [];
  const queue = new CostQueue();
  const waitEdge: (Edge | undefined)[] = [];
  const waitTable: number[] = [];
  const wait = (edge: Edge | undefined, table: number, cost: number): void => {
    queue.push(waitEdge.length, cost);
    waitEdge.push(edge);
    waitTable.push(table);
  };
  entries.forEach((entry, i) => wait(undefined, i, entry.cost));
  const scratch = kernel.zero();
  const pushed = kernel.zero();
  while (queue.size > 0) {
    const cost = queue.nextCost();
    const item = queue.pop();
    const edge = waitEdge[item];
    let vector: Vector;
    let location: number;
    if (edge === undefined) {
      vector = entries[waitTable[item]].vector;
      location = entries[waitTable[item]].location;
    } else {
      vector = pushed;
      kernel.push(tables[waitTable[item]].vector, edge, vector);
      location = edge.to;
    }
    if (!budget.spend()) throw new BudgetEnded('budget ended while working forward from the start');
    scratch.set(vector);
    if (!(bases[location] ??= echelonOver(problem.p, problem.width)).insert(scratch)) continue;
    const parent = edge === undefined ? -1 - waitTable[item] : waitTable[item];
    const number = tables.push({ location, vector: vector.slice(), cost, edge, parent }) - 1;
    (at[location] ??= []).push(number);
    if (graph.locations[location].looks) continue;
    for (const next of graph.waysFrom(location, undefined, budget).edges) wait(next, number, cost + next.cost);
  }
  return { tables, at, bases };
}
