import { seeded } from '../base/seeded.ts';
import { holds } from '../claims/formula.ts';
import { BudgetEnded, type Edge } from '../routine/graph.ts';
import { RandomWay } from './random-way.ts';
import type { Meanings, Question } from './question.ts';
import type { SentenceDecision } from './decision.ts';
import type { TableSlots } from '../routine/starts.ts';
import { afterEdge, seenAt, slotView } from '../routine/table.ts';

// A random performance that has not ended by then is given up; it counts as no run.
const MOST_STEPS = 20_000;
// Exchanges that mix an open set-up well enough for a trial.
const SET_UP_STEPS = 200;

// Steps after which the caller is asked whether to go on.
const ASK_EVERY = 256;

/** Random performances for a sentence that the search could not settle; a failing one settles it after all. */
export function tryOut(question: Question, meanings: Meanings, decision: SentenceDecision): SentenceDecision {
  const { graph, starts, limits } = question;
  const random = seeded(limits.seed);
  let runs = 0;
  const isEnded = (): boolean => limits.goOn?.(question.budget.spent) === false;
  for (let trial = 0; trial < limits.trials && !isEnded(); trial++) {
    const start = starts.random(random);
    let table: TableSlots = start;
    const path: Edge[] = [];
    let cost = 0;
    let location = graph.start;
    const way = new RandomWay(graph, random);
    try {
      for (let step = 0; step < MOST_STEPS; step++) {
        if (step % ASK_EVERY === ASK_EVERY - 1 && isEnded()) break;
        const here = graph.locations[location];
        if (here.exit) {
          runs++;
          const meaning = meanings.at(location);
          if (meaning === null || holds(meaning.formula, slotView(table, graph))) break;
          const failure = { way: { start, path, cost }, stuck: undefined, shortest: false };
          const trials = { runs, failures: 1, seed: limits.seed };
          return { ...decision, verdict: 'refuted', method: 'trials', failure, trials, reason: undefined };
        }
        const ways = graph.waysFrom(location, seenAt(graph, here, slotView(table, graph)), question.budget);
        if (ways.stuck !== undefined) {
          const failure = { way: { start, path, cost }, stuck: ways.stuck, shortest: false };
          const trials = { runs: runs + 1, failures: 1, seed: limits.seed };
          return { ...decision, verdict: 'refuted', method: 'trials', failure, trials, reason: undefined };
        }
        if (ways.edges.length === 0) break;
        const mixing = here.at < 0 && step < SET_UP_STEPS ? ways.edges.filter((e) => e.to === location) : [];
        const open = mixing.length > 0 ? mixing : ways.edges;
        const edge = mixing.length > 0 ? open[Math.floor(random() * open.length)] : way.pick(location, open);
        path.push(edge);
        cost += edge.cost;
        table = afterEdge(table, edge);
        location = edge.to;
      }
    } catch (error) {
      if (error instanceof BudgetEnded) break;
      throw error;
    }
  }
  return { ...decision, trials: { runs, failures: 0, seed: limits.seed } };
}
