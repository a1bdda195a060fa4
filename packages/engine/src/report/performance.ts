import type { Range } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Key } from '../moves/move.ts';
import { COST_OFF, COST_STEP, type Edge, type Graph } from '../routine/graph.ts';
import type { Chooser } from '../routine/routine.ts';
import type { StartTable } from '../routine/starts.ts';
import { decidingAt, sayRun, sentenceOf, slipIn } from './choices.ts';
import { runsOf, type Run, type Standing } from './runs.ts';
import { tableData, type TableData } from './table-data.ts';

/** What a performance costs: decisions off the plain path, steps begun, options taken. */
export interface CostData {
  readonly decisions: number;
  readonly steps: number;
  readonly options: number;
}

/** One doing of one step, or one choice of a block: whether to go on, or which way. */
export interface PerformanceStep {
  readonly is: 'move' | 'choice';
  /** The step's number in the note: `1.2`. */
  readonly number: string;
  readonly range: Range;
  readonly sentence: string;
  readonly who: Chooser;
  /** True when the performer does not get to know the choice. */
  readonly secret: boolean;
  /** The choice in words; empty where the sentence leaves none. */
  readonly choice: string;
  /** What was taken, to be written down and replayed. */
  readonly keys: readonly Key[];
  /** What went wrong in doing the step, in words; absent where nothing did. */
  readonly slip?: string;
  readonly after: TableData;
}

/** A whole performance from the set-up to its end, as plain data. */
export interface Performance {
  readonly cost: CostData;
  /** The cards as they are in this performance, anything that the set-up left open filled in. */
  readonly cards: readonly Card[];
  readonly start: TableData;
  readonly steps: readonly PerformanceStep[];
  readonly end: TableData;
}

export function costData(cost: number): CostData {
  return {
    decisions: Math.floor(cost / COST_OFF),
    steps: Math.floor((cost % COST_OFF) / COST_STEP),
    options: cost % COST_STEP,
  };
}

/** A path through the graph as a person would tell it; `text` is the note. */
export function performanceOf(
  graph: Graph,
  start: StartTable,
  path: readonly Edge[],
  text: string,
): Performance {
  const { runs, end } = runsOf(graph, start, path);
  const filled = runs[0]?.kind === 'set-up' ? runs[0].standings.at(-1) : undefined;
  const begin = filled ?? { location: graph.start, table: start };
  return {
    cost: costData(path.reduce((sum, edge) => sum + edge.cost, 0)),
    cards: [...start.cards].sort((a, b) => a.id - b.id),
    start: dataOf(graph, begin),
    steps: runs.filter((run) => run.kind !== 'set-up').map((run) => stepOf(graph, run, text)),
    end: dataOf(graph, end),
  };
}

function stepOf(graph: Graph, run: Run, text: string): PerformanceStep {
  const location = graph.locations[run.edges[0].from];
  const slip = slipIn(graph, run);
  const deciding = decidingAt(graph, location);
  const { who, secret } = deciding;
  const step = slip?.step ?? deciding.step;
  // The set-up is told apart before, and every other edge comes from a step.
  if (step === undefined) throw new Error('an edge without a step');
  return {
    is: run.kind === 'control' ? 'choice' : 'move',
    number: step.number,
    range: step.range,
    sentence: sentenceOf(step, text),
    who,
    secret,
    choice: sayRun(graph, run, text),
    keys: run.edges.map(({ key }) => key),
    ...(slip === undefined ? {} : { slip: slip.words }),
    after: dataOf(graph, run.standings[run.standings.length - 1]),
  };
}

export function dataOf(graph: Graph, at: Standing): TableData {
  const { layout, numbers } = graph.locations[at.location];
  return tableData(at.table, layout, graph, numbers);
}
