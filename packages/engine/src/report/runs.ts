import { START, type Key } from '../moves/move.ts';
import type { Edge, Graph, Ways } from '../routine/graph.ts';
import type { StartTable, TableSlots } from '../routine/starts.ts';
import { afterEdge, seenAt, slotView } from '../routine/table.ts';

/** Where a performance stands and what lies there. */
export interface Standing {
  readonly location: number;
  readonly table: TableSlots;
}

/** The ways on; where a move looks at cards they depend on what it sees. */
export function waysOn(graph: Graph, at: Standing): Ways {
  return graph.waysFrom(at.location, seenHere(graph, at));
}

export function seenHere(graph: Graph, at: Standing): Key | undefined {
  return seenAt(graph, graph.locations[at.location], slotView(at.table, graph));
}

export function takeEdge(at: Standing, edge: Edge): Standing {
  return { location: edge.to, table: afterEdge(at.table, edge) };
}

/** Options taken one after another that belong to one doing of one step. */
export interface Run {
  readonly kind: Edge['kind'];
  readonly edges: readonly Edge[];
  /** Before each option, and after the last. */
  readonly standings: readonly Standing[];
}

/** Decisions of one slip follow each other, and none of them does the step. */
function isSameSlip(graph: Graph, first: Edge, next: Edge): boolean {
  const [a, b] = [graph.asideOf(first), graph.asideOf(next)];
  return a !== undefined && b !== undefined && a.step === b.step && !a.passes && !b.passes;
}

/**
 * Cuts a path into runs: a move begins where it stands at its start, every choice of a block is by itself, and what fills in the
 * set-up is one run.
 */
export function runsOf(
  graph: Graph,
  start: StartTable,
  path: readonly Edge[],
): { runs: Run[]; end: Standing } {
  const runs: { kind: Edge['kind']; edges: Edge[]; standings: Standing[] }[] = [];
  let at: Standing = { location: graph.start, table: start };
  for (const edge of path) {
    const last = runs.at(-1);
    const goesOn =
      edge.kind === 'set-up'
        ? last?.kind === 'set-up'
        : edge.kind === 'slip'
          ? last?.kind === 'slip' && isSameSlip(graph, last.edges[0], edge)
          : edge.kind === 'move' && last?.kind === 'move' && graph.locations[edge.from].phase !== START;
    const run = goesOn && last !== undefined ? last : { kind: edge.kind, edges: [], standings: [at] };
    if (run !== last) runs.push(run);
    run.edges.push(edge);
    at = takeEdge(at, edge);
    run.standings.push(at);
  }
  return { runs, end: at };
}
