import { layoutKey, type Layout } from '../../pictures/layout.ts';
import { Graph, type Edge } from '../../routine/graph.ts';
import type { MoveStep } from '../../routine/routine.ts';
import { alone } from './mix.ts';
import { composed, wholeKey } from './whole.ts';

/**
 * Everything that some steps can do to these piles, each result once: where every card ends and how it lies. Null where there are more
 * than `most` ways, or the steps get stuck or look at cards.
 */
export function outcomeSet(
  steps: readonly MoveStep[],
  layout: Layout,
  most: number,
): ReadonlySet<string> | null {
  const graph = new Graph(alone(steps, layout));
  const found = new Set<string>();
  const path: Edge[] = [];
  let ways = 0;
  const go = (at: number): boolean => {
    const here = graph.locations[at];
    if (here.exit) {
      if (++ways > most) return false;
      found.add(`${layoutKey(here.layout)} ${wholeKey(composed(path, graph.cards))}`);
      return true;
    }
    if (here.looks || path.length > LONGEST) return false;
    const { edges, stuck } = graph.waysFrom(at);
    if (stuck !== undefined || edges.length === 0 || edges.length > most) return false;
    return edges.every((edge) => {
      path.push(edge);
      const isFine = go(edge.to);
      path.pop();
      return isFine;
    });
  };
  return go(graph.start) ? found : null;
}

const LONGEST = 600;
