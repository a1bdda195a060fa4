import { SLIPS } from '../insight/slips/index.ts';
import { handledIn } from '../insight/slips/possible.ts';
import type { SlipAfter, SlipWay } from '../insight/slips/slip.ts';
import { isStuck, START, type Key } from '../moves/move.ts';
import type { Action } from '../pictures/actions.ts';
import { effectOf } from '../pictures/effect.ts';
import type { Layout } from '../pictures/layout.ts';
import type { Edge, Graph } from '../routine/graph.ts';
import { optionOf } from './choices.ts';
import { seenHere, takeEdge, waysOn, type Standing } from './runs.ts';
import type { TableSlip } from './slips-data.ts';

/** Which slip, which way, and what is chosen in the step besides. */
export interface TableSlipChoice {
  readonly slip: string;
  readonly key: string;
  readonly choice: Key | undefined;
}

interface Way extends SlipWay {
  readonly key: string;
  /** Done once the step is, or instead of it. */
  readonly when: 'instead' | 'after';
}

/** A step done as it should be, from its beginning to its end. */
interface Done {
  readonly edges: readonly Edge[];
  readonly actions: readonly Action[];
  readonly at: Standing;
}

// Options in one step after which it is given up.
const MOST_OPTIONS = 10_000;

/** Every slip that can be made in the step that begins here. */
export function slipsAt(graph: Graph, at: Standing, choice: Key | undefined): TableSlip[] {
  const done = doneFrom(graph, at, choice);
  if (done === null) return [];
  return SLIPS.flatMap(({ id, title, help }): TableSlip[] => {
    const ways = waysOf(graph, at, done, id).map(({ key, words }) => ({ key, words }));
    return ways.length === 0 ? [] : [{ slip: id, title, help, ways }];
  });
}

/** The edges of a slip: instead of the step, or the step and what happens after it. */
export function slipEdges(graph: Graph, at: Standing, { slip, key, choice }: TableSlipChoice): Edge[] {
  const done = doneFrom(graph, at, choice);
  const way = done === null ? undefined : waysOf(graph, at, done, slip).find((one) => one.key === key);
  const instruction = graph.instructionOf(graph.locations[at.location]);
  // Callers choose among the slips that they were given.
  if (done === null || way === undefined || instruction?.do !== 'move')
    throw new Error(`no slip ${slip} ${key}`);
  const { step } = instruction;
  const { words, actions } = way;
  if (way.when === 'after')
    return [...done.edges, graph.aside(done.at.location, { key, words, step, actions, passes: false })];
  const set = done.edges.length === 1 ? setBy(graph, at, done.edges[0]) : undefined;
  return [
    graph.aside(at.location, {
      key,
      words,
      step,
      actions,
      passes: true,
      ...(set === undefined ? {} : { set }),
    }),
  ];
}

/** Null where no step begins here, or it gets stuck. */
function doneFrom(graph: Graph, from: Standing, choice: Key | undefined): Done | null {
  const begin = graph.locations[from.location];
  if (graph.instructionOf(begin)?.do !== 'move' || begin.phase !== START) return null;
  const edges: Edge[] = [];
  const actions: Action[] = [];
  let at = from;
  do {
    const ways = waysOn(graph, at).edges;
    const edge =
      edges.length === 0 && choice !== undefined ? ways.find(({ key }) => key === choice) : ways[0];
    if (edge === undefined || edges.length > MOST_OPTIONS) return null;
    actions.push(...(optionOf(graph, at, edge)?.actions ?? []));
    edges.push(edge);
    at = takeEdge(at, edge);
  } while (graph.locations[at.location].at === begin.at && graph.locations[at.location].phase !== START);
  return { edges, actions, at };
}

function waysOf(graph: Graph, at: Standing, { edges, actions, at: end }: Done, id: string): Way[] {
  const location = graph.locations[at.location];
  const instruction = graph.instructionOf(location);
  const slip = SLIPS.find((one) => one.id === id);
  if (instruction?.do !== 'move' || slip === undefined) return [];
  const { step, move } = instruction;
  if (slip.when === 'after') {
    const { layout } = graph.locations[end.location];
    return afterWays(graph, slip, handledIn(actions, layout), layout);
  }
  // A mix of many decisions is not done wrongly as a whole.
  if (edges.length > 1 && slip.whole !== true) return [];
  const view = graph.view(location, seenHere(graph, at));
  return slip
    .ways({ step, move, view, option: { key: edges[0].key, actions } })
    .map((way) => ({ ...way, key: String(way.key), when: 'instead' }));
}

/** All decisions of a slip taken together: `packet 3 7`. */
function afterWays(graph: Graph, { decisions }: SlipAfter, handled: readonly string[], from: Layout): Way[] {
  let all: { keys: string[]; words: string[]; actions: readonly Action[]; layout: Layout }[] = [
    { keys: [], words: [], actions: [], layout: from },
  ];
  for (const ways of decisions)
    all = all.flatMap(({ keys, words, actions, layout }) =>
      ways(handled, layout).map((way) => ({
        keys: [...keys, String(way.key)],
        words: [...words, way.words],
        actions: [...actions, ...way.actions],
        layout: effectOf(layout, way.actions, graph.bits).after,
      })),
    );
  return all.map(({ keys, words, actions }) => ({
    key: keys.join(' '),
    words: words.join(' and '),
    actions,
    when: 'after',
  }));
}

function setBy(graph: Graph, at: Standing, edge: Edge): Readonly<Record<string, number>> | undefined {
  const location = graph.locations[at.location];
  const instruction = graph.instructionOf(location);
  if (instruction?.do !== 'move') return undefined;
  const options = instruction.move.options(instruction.args, graph.view(location, seenHere(graph, at)));
  return isStuck(options) ? undefined : options.find(({ key }) => key === edge.key)?.set;
}
