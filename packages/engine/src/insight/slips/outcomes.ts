import { seeded } from '../../base/seeded.ts';
import { holds } from '../../claims/formula.ts';
import type { Meanings, Question } from '../../proving/question.ts';
import type { Edge } from '../../routine/graph.ts';
import type { TableSlots } from '../../routine/starts.ts';
import { afterEdge, seenAt, slotView } from '../../routine/table.ts';
import type { SlippedPath } from './affine.ts';

/** Whether sentences came out in some performances, one by one and all in one. */
export interface Outcomes {
  readonly each: boolean[];
  together: boolean;
}

export function noOutcome(sentences: number): Outcomes {
  return { each: Array.from({ length: sentences }, () => false), together: false };
}

// Ways on from one slip: the plainest, then some at random; and options after which one is given up.
const TRIES = 4;
const MOST_OPTIONS = 2_000;

/** Goes on from some slips to the end and notes what comes out, until all sentences do in one performance. Throws BudgetEnded. */
export function tryOn(
  question: Question,
  slips: Iterable<SlippedPath>,
  meanings: readonly Meanings[],
  seed: number,
  outcomes: Outcomes,
): void {
  const random = seeded(seed);
  for (const slipped of slips)
    for (let i = 0; i < TRIES; i++) {
      const end = goneOn(question, slipped, i === 0 ? () => 0 : random);
      if (end === null) continue;
      const hold = meanings.map((meaning) => {
        const formula = meaning.at(end.location)?.formula;
        return formula !== undefined && holds(formula, slotView(end.table, question.graph));
      });
      hold.forEach((isTrue, k) => (outcomes.each[k] ||= isTrue));
      outcomes.together ||= hold.every(Boolean);
      if (outcomes.together) return;
    }
}

/** A performance gone on with to its end; null where it gets stuck or goes on and on. */
function goneOn(
  { graph, budget }: Question,
  { start, path }: SlippedPath,
  random: () => number,
): { readonly location: number; readonly table: TableSlots } | null {
  let table: TableSlots = start;
  for (const edge of path) table = afterEdge(table, edge);
  let at = path[path.length - 1].to;
  for (let n = 0; n < MOST_OPTIONS; n++) {
    const here = graph.locations[at];
    if (here.exit) return { location: at, table };
    const { edges } = graph.waysFrom(at, seenAt(graph, here, slotView(table, graph)), budget);
    if (edges.length === 0) return null;
    const edge: Edge = edges[Math.floor(random() * edges.length)];
    table = afterEdge(table, edge);
    at = edge.to;
  }
  return null;
}
