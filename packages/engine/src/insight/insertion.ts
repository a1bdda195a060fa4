import { Budget } from '../base/budget.ts';
import { echelonOver, type Echelon, type Vector } from '../base/echelon.ts';
import type { Key } from '../moves/move.ts';
import { layoutKey, type Layout } from '../pictures/layout.ts';
import type { Moments } from '../proving/moments.ts';
import { Graph, type Edge } from '../routine/graph.ts';
import type { MoveStep, Routine, Step } from '../routine/routine.ts';

/**
 * Some steps by themselves on a table of some sizes: a little graph from `start` to `end`, the same wherever the sizes are the same.
 * Null when they can get stuck there, or do not leave the piles as they found them.
 */
export interface LittleGraph {
  readonly graph: Graph;
  readonly nodes: readonly number[];
  readonly start: number;
  readonly end: number;
  readonly edges: readonly Edge[];
  /** Keys of the first decision. */
  readonly keys: readonly Key[];
}

const MOST_NODES = 20_000;

export class LittleGraphs {
  private readonly made = new Map<string, LittleGraph | null>();

  of(steps: readonly MoveStep[], layout: Layout): LittleGraph | null {
    const key = `${steps.map((step) => step.move + JSON.stringify(step.args)).join()}|${layoutKey(layout)}`;
    let little = this.made.get(key);
    if (little === undefined) this.made.set(key, (little = build(steps, layout)));
    return little;
  }
}

function build(steps: readonly MoveStep[], layout: Layout): LittleGraph | null {
  const graph = new Graph(alone(steps, layout));
  const start = graph.start;
  const nodes = graph.reach([start], new Budget(MOST_NODES * 20));
  const exits = nodes.filter((id) => graph.locations[id].exit);
  if (nodes.some((id) => graph.locations[id].looks || graph.waysFrom(id).stuck !== undefined)) return null;
  if (exits.length !== 1 || layoutKey(graph.locations[exits[0]].layout) !== layoutKey(layout)) return null;
  const edges = nodes.flatMap((id) => graph.waysFrom(id).edges);
  return {
    graph,
    nodes,
    start,
    end: exits[0],
    edges,
    keys: graph.waysFrom(start).edges.map((edge) => edge.key),
  };
}

/** A routine of these steps on anonymous cards: only sizes matter. */
export function alone(steps: readonly MoveStep[], layout: Layout): Routine {
  let next = 0;
  const piles = layout.names.map((name, i) => ({
    name,
    cards: Array.from({ length: layout.sizes[i] }, () => ({ card: next++, up: 0 as const, end: 0 as const })),
  }));
  return {
    title: '',
    cards: Array.from({ length: next }, (_, id) => ({ id, name: `${id}`, attributes: {} })),
    setUp: { piles, freedoms: [] },
    steps,
    endings: [],
  };
}

/** The moment before a step: the locations at which the step begins, and what lies between two of its visits. */
export interface Moment {
  readonly number: string;
  readonly locations: readonly number[];
  /** Locations that lie behind some location of the moment and before some other or the same: where need changes with a mix. */
  readonly between: ReadonlySet<number>;
}

interface Node {
  /** Edges into the node with the node they come from. */
  readonly into: { readonly from: number; readonly edge: Edge }[];
}

/**
 * Whether the sentence stays certain when a mix is put in at a moment as a step of its own, once at each visit. Need is worked out
 * anew for the part of the working that lies between two visits, repetition included; elsewhere it is what it was.
 * @param allow which first decisions of the mix are left to the spectator
 */
export function staysCertain(
  moments: Moments,
  main: Graph,
  moment: Moment,
  littles: ReadonlyMap<number, LittleGraph>,
  allow: (key: Key) => boolean = () => true,
): boolean {
  const { problem, solved, have } = moments;
  const { kernel, need } = solved;
  // Nodes: main locations by their number, then the mix's own nodes, one copy for each location of the moment.
  const nodes = new Map<number, Node>();
  const node = (id: number): Node => {
    let found = nodes.get(id);
    if (found === undefined) nodes.set(id, (found = { into: [] }));
    return found;
  };
  let offset = main.locations.length;
  const entryOf = new Map<number, number>();
  for (const location of moment.locations) {
    const little = littles.get(location);
    if (little === undefined) return false;
    const at = offset;
    offset += little.graph.locations.length;
    entryOf.set(location, at + little.start);
    for (const edge of little.edges) {
      if (edge.from === little.start && !allow(edge.key)) continue;
      const to = edge.to === little.end ? location : at + edge.to;
      node(to).into.push({ from: at + edge.from, edge });
    }
  }
  const start: { node: number; vector: Vector }[] = [];
  for (const id of moment.between) {
    let leavesOnly = true;
    for (const edge of main.waysFrom(id).edges) {
      if (!moment.between.has(edge.to)) continue;
      leavesOnly = false;
      node(entryOf.get(edge.to) ?? edge.to).into.push({ from: id, edge });
    }
    if (leavesOnly)
      for (const row of need.at[id] ?? []) start.push({ node: id, vector: need.rows.vector(row) });
    else
      for (const edge of main.waysFrom(id).edges)
        if (!moment.between.has(edge.to))
          for (const row of need.at[edge.to] ?? []) {
            const vector = kernel.zero();
            kernel.pull(need.rows.vector(row), edge, vector);
            start.push({ node: id, vector });
          }
  }
  // Tables that come in from outside, where nothing has changed, at the node they come in by.
  const arriving = new Map<number, Vector[]>();
  const arrive = (location: number, vector: Vector): void => {
    const at = entryOf.get(location) ?? location;
    const known = arriving.get(at);
    if (known === undefined) arriving.set(at, [vector]);
    else known.push(vector);
  };
  for (const id of moment.between) {
    for (const table of have.at[id] ?? []) {
      const edge = have.tables.edge[table];
      // A kept table whose own way in comes from outside, or from nowhere: the others follow from these.
      if (edge < 0) arrive(id, have.tables.vector(table));
    }
  }
  for (const [from, edges] of inwardEdges(main, moment, have))
    for (const edge of edges)
      for (const table of have.at[from] ?? []) {
        const vector = kernel.zero();
        kernel.push(have.tables.vector(table), edge, vector);
        arrive(edge.to, vector);
      }
  const bases = new Map<number, Echelon>();
  const scratch = kernel.zero();
  const queue = start;
  for (let i = 0; i < queue.length; i++) {
    const { node: at, vector } = queue[i];
    let basis = bases.get(at);
    if (basis === undefined) bases.set(at, (basis = echelonOver(problem.p, problem.width)));
    if (basis.rank === problem.width) continue;
    scratch.set(vector);
    if (!basis.insert(scratch)) continue;
    for (const table of arriving.get(at) ?? []) if (kernel.value(vector, table) !== 0) return false;
    for (const { from, edge } of nodes.get(at)?.into ?? []) {
      const before = kernel.zero();
      kernel.pull(vector, edge, before);
      queue.push({ node: from, vector: before });
    }
  }
  return true;
}

const inwardKnown = new WeakMap<Moment, Map<number, Edge[]>>();

/** Edges from outside into the part between visits, from places that are really reached. */
function inwardEdges(main: Graph, moment: Moment, have: Moments['have']): Map<number, Edge[]> {
  const known = inwardKnown.get(moment);
  if (known !== undefined) return known;
  const edges = new Map<number, Edge[]>();
  have.at.forEach((tables, id) => {
    if (tables === undefined || moment.between.has(id)) return;
    const found = main.waysFrom(id).edges.filter((edge) => moment.between.has(edge.to));
    if (found.length > 0) edges.set(id, found);
  });
  inwardKnown.set(moment, edges);
  return edges;
}

/** All moments of a routine's graph: before each step, in the order of the note, and `end`. */
export function momentsIn(graph: Graph, order: readonly number[]): Moment[] {
  const byNumber = new Map<string, number[]>();
  for (const id of order) {
    const location = graph.locations[id];
    if (location.at < 0 || (location.phase !== 0 && !location.exit)) continue;
    const number = location.exit ? 'end' : (location.origin?.number ?? '');
    const list = byNumber.get(number);
    if (list === undefined) byNumber.set(number, [id]);
    else list.push(id);
  }
  const into: number[][] = [];
  for (const id of order) for (const edge of graph.waysFrom(id).edges) (into[edge.to] ??= []).push(id);
  return [...byNumber].map(([number, locations]) => {
    const behind = closure(locations, (id) => graph.waysFrom(id).edges.map((edge) => edge.to));
    const before = closure(locations, (id) => into[id] ?? []);
    return { number, locations, between: new Set([...behind].filter((id) => before.has(id))) };
  });
}

function closure(from: readonly number[], next: (id: number) => readonly number[]): Set<number> {
  const seen = new Set(from);
  for (const id of seen) for (const to of next(id)) seen.add(to);
  return seen;
}

/** The routine with steps put in before the step of that number (`end`: after the last). */
export function withSteps(routine: Routine, number: string, steps: readonly Step[]): Routine {
  const into = (list: readonly Step[]): Step[] =>
    list.flatMap((step): Step[] => {
      const inner = within(step, into);
      return step.number === number ? [...steps, inner] : [inner];
    });
  return { ...routine, steps: number === 'end' ? [...routine.steps, ...steps] : into(routine.steps) };
}

/** A step with its own steps changed. */
export function within(step: Step, change: (steps: readonly Step[]) => Step[]): Step {
  switch (step.do) {
    case 'move':
      return step;
    case 'repeat':
    case 'each':
      return { ...step, body: change(step.body) };
    case 'either':
      return { ...step, branches: step.branches.map(change) };
    case 'if':
      return { ...step, then: change(step.then), otherwise: change(step.otherwise) };
  }
}
