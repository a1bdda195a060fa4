import type { Vector } from '../base/echelon.ts';
import type { Ending } from '../routine/routine.ts';
import type { Question } from './question.ts';
import type { Failure, SentenceDecision, Solved } from './decision.ts';
import { kernelFor } from './kernel.ts';
import { needOf, pathOf } from './need.ts';
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
    const broken = (row: Vector) => tables.find(({ vector }) => kernel.value(row, vector) !== 0);
    let found = -1;
    const need = needOf(problem, kernel, graph, region, budget, (location, vector, cost, number) => {
      if (failure !== undefined && cost >= failure.way.cost) return true;
      if (location !== graph.start || broken(vector) === undefined) return false;
      found = number;
      return true;
    });
    rows += need.rows.count;
    if (found >= 0) {
      const start = broken(need.rows.vector(found))?.table ?? starts.base;
      const way = { start, path: pathOf(need, graph, found), cost: need.rows.cost[found] };
      failure = { way, stuck: undefined, shortest: true };
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
    rule: undefined,
    chance: undefined,
    reason: undefined,
  };
}
