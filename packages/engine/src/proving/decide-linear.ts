import type { Ending } from '../routine/routine.ts';
import type { Edge } from '../routine/graph.ts';
import type { Question } from './question.ts';
import type { Failure, SentenceDecision, Solved } from './decision.ts';
import { kernelFor } from './kernel.ts';
import { needOf, type Need, type NeedRow } from './need.ts';
import { problemsOf, type equationsOf } from './problem.ts';
import type { Region } from './region.ts';

type Equations = NonNullable<ReturnType<typeof equationsOf>>;

/** Proof or shortest failure of a conjunction of equations, working backward from the ending. */
export function decideLinear(
  question: Question,
  region: Region,
  ending: Ending,
  exits: readonly { readonly exit: number; readonly equations: Equations }[],
  stuck: Failure | undefined,
): SentenceDecision {
  const { graph, starts, budget } = question;
  const solved: Solved[] = [];
  let failure = stuck;
  let rows = 0;
  for (const problem of problemsOf(graph, starts.universe, region.ops, exits)) {
    const kernel = kernelFor(problem, graph.cards);
    const tables = starts.spanning.flatMap((table) =>
      problem.members.map((member) => ({ table, vector: kernel.ofTable(member, table) })),
    );
    const broken = (row: NeedRow) => tables.find(({ vector }) => kernel.value(row.vector, vector) !== 0);
    let found: NeedRow | undefined;
    const need = needOf(problem, kernel, region, budget, (row) => {
      if (failure !== undefined && row.cost >= failure.way.cost) return true;
      if (row.location !== graph.start || broken(row) === undefined) return false;
      found = row;
      return true;
    });
    rows += need.rows.length;
    if (found !== undefined) {
      const start = broken(found)?.table ?? starts.base;
      failure = { way: { start, path: pathOf(need, found), cost: found.cost }, stuck: undefined, shortest: true };
    } else if (need.complete) solved.push({ problem, kernel, need });
  }
  return {
    ending,
    verdict: failure === undefined ? 'proved' : 'refuted',
    method: solved.length === 0 && rows === 0 ? 'sizes' : 'linear',
    failure,
    solved: failure === undefined ? solved : [],
    reads: undefined,
    states: 0,
    rows,
    trials: undefined,
    reason: undefined,
  };
}

/** The edges from a row's location to the exit whose equation it is. */
export function pathOf(need: Need, row: NeedRow): Edge[] {
  const path: Edge[] = [];
  for (let at = row; at.edge !== undefined; at = need.rows[at.parent]) path.push(at.edge);
  return path;
}
