import type { Budget } from '../base/budget.ts';
import { echelonOver, type Echelon, type Vector } from '../base/echelon.ts';
import { CostQueue } from '../base/heap.ts';
import { BudgetEnded, type Graph } from '../routine/graph.ts';
import { Kept, Waiting } from './kept.ts';
import type { Kernel } from './kernel.ts';
import type { Problem } from './problem.ts';

/** What is certainly true at each location: exactly the equations that hold on all kept tables there. */
export interface Have {
  /** Tables that are really reached; parent and edge lead back to the start, parent -1 - i at entry i. */
  readonly tables: Kept;
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
  const scratch = kernel.zero();
  const vector = kernel.zero();
  const earlier = kernel.zero();
  const tables = new Kept(scratch);
  const at: number[][] = [];
  const bases: Echelon[] = [];
  const queue = new CostQueue();
  const waiting = new Waiting();
  entries.forEach((entry, i) => queue.push(waiting.add(-1, i), entry.cost));
  while (queue.size > 0) {
    const cost = queue.nextCost();
    const item = queue.pop();
    const edge = waiting.edge(item);
    const origin = waiting.origin(item);
    let location: number;
    if (edge < 0) {
      vector.set(entries[origin].vector);
      location = entries[origin].location;
    } else {
      const along = graph.edges[edge];
      location = along.to;
      tables.read(origin, earlier);
      kernel.push(earlier, along, vector);
    }
    if (!budget.spend()) throw new BudgetEnded('budget ended while working forward from the start');
    scratch.set(vector);
    if (!(bases[location] ??= echelonOver(problem.p, problem.width)).insert(scratch)) continue;
    const number = tables.add(vector, location, edge < 0 ? -1 - origin : origin, edge, cost);
    (at[location] ??= []).push(number);
    if (graph.locations[location].looks) continue;
    for (const next of graph.waysFrom(location, undefined, budget).edges)
      queue.push(waiting.add(next.id, number), cost + next.cost);
  }
  return { tables, at, bases };
}
