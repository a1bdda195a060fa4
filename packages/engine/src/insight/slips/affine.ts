import type { Budget } from '../../base/budget.ts';
import { echelonOver, type Vector } from '../../base/echelon.ts';
import { FALSE } from '../../claims/formula.ts';
import { haveOf, type Entry, type Have } from '../../proving/have.ts';
import { kernelFor, type Kernel } from '../../proving/kernel.ts';
import { needOf, pathOf, type Need } from '../../proving/need.ts';
import { equationsOf, problemsOf, type Problem } from '../../proving/problem.ts';
import { cheapestPath } from '../../proving/paths.ts';
import type { Meanings } from '../../proving/question.ts';
import type { Region } from '../../proving/region.ts';
import { BudgetEnded, type Edge, type Graph } from '../../routine/graph.ts';
import type { StartTable, Starts } from '../../routine/starts.ts';
import { haveFrom } from '../altering/probed.ts';
import type { PossibleSlip, SlipMoment } from './possible.ts';

/** A performance with a slip in it, as far as it is told. */
export interface SlippedPath {
  readonly start: StartTable;
  readonly path: readonly Edge[];
}

/** What linear algebra says of one slip and one sentence. */
export interface AffineJudged {
  readonly isHarmless: boolean;
  /** A performance that fails or gets stuck; undefined where it is harmless. */
  readonly failure: SlippedPath | undefined;
  /** Keys of the ways that do no harm whatever is chosen; null where more than one decision is made. */
  readonly harmlessKeys: ReadonlySet<string> | null;
}

interface Family {
  readonly problem: Problem;
  readonly kernel: Kernel;
  readonly need: Need;
  readonly have: Have;
}

/** A table of a basis, with how it comes about. */
interface Come {
  readonly vector: Vector;
  /** Number among the tables that are kept before the slip. */
  readonly table: number;
  readonly edges: readonly Edge[];
}

interface Parts {
  readonly graph: Graph;
  readonly starts: Starts;
  /** All that can be reached with or without a slip. */
  readonly region: Region;
  readonly budget: Budget;
}

/**
 * One sentence that is a conjunction of equations, asked about every slip. A slip is an edge: what comes to it is what is certain without
 * it, and what must hold behind it is what is needed without it.
 */
export class AffineSlips {
  private readonly families: readonly Family[];
  private readonly parts: Parts;
  /** Locations from which a performance can get stuck. */
  private readonly stuckAhead: ReadonlySet<number>;

  private constructor(parts: Parts, families: readonly Family[]) {
    this.parts = parts;
    this.families = families;
    const ahead = new Set(parts.region.stuck);
    for (const id of ahead) for (const { from } of parts.region.into[id] ?? []) ahead.add(from);
    this.stuckAhead = ahead;
  }

  /** Null where the sentence is no conjunction of equations at some end. Throws BudgetEnded. */
  static of(parts: Parts, meanings: Meanings, ops: readonly number[]): AffineSlips | null {
    const { graph, starts, region, budget } = parts;
    const exits = [];
    for (const exit of region.exits) {
      // Where a sentence makes no sense any more, because a pile it speaks of is not there, it is not true.
      const formula = meanings.at(exit)?.formula ?? FALSE;
      const equations = equationsOf(formula, starts.universe);
      if (equations === null) return null;
      exits.push({ exit, equations });
    }
    const families = problemsOf(graph, starts.universe, ops, exits).map((problem): Family => {
      const kernel = kernelFor(problem, graph.cards);
      const need = needOf(problem, kernel, graph, region, budget);
      return { problem, kernel, need, have: haveFrom({ graph, starts }, problem, kernel, budget) };
    });
    return new AffineSlips(parts, families);
  }

  judge({ moments }: PossibleSlip): AffineJudged {
    const single = moments.every(({ decisions }) => decisions.length === 1);
    const keys = new Set<string>();
    const harmful = new Set<string>();
    let failure: SlippedPath | undefined;
    let least = Infinity;
    const fails = (key: string, cost: number, way: () => SlippedPath | undefined): void => {
      harmful.add(key);
      if (cost >= least) return;
      const found = way();
      if (found === undefined) return;
      [failure, least] = [found, cost];
    };
    for (const moment of moments) {
      const last = moment.decisions[moment.decisions.length - 1];
      for (const { key } of last) keys.add(String(key));
      for (const edge of last)
        if (this.stuckAhead.has(edge.to) && !harmful.has(String(edge.key)))
          fails(String(edge.key), 2 ** 48, () => this.stuckWay(moment, edge));
      for (const family of this.families) this.tryFamily(family, moment, fails);
    }
    return {
      isHarmless: harmful.size === 0,
      failure,
      harmlessKeys: single ? new Set([...keys].filter((key) => !harmful.has(key))) : null,
    };
  }

  /** True when every performance with the slip fails, by what is certain behind it; false when that is not seen. */
  failsAlways({ moments }: PossibleSlip): boolean {
    const { graph, region } = this.parts;
    const ends = moments.flatMap(({ decisions }) => decisions[decisions.length - 1].map(({ to }) => to));
    const behind = new Set(ends);
    for (const id of behind) for (const { to } of graph.waysFrom(id).edges) behind.add(to);
    let open = region.exits.filter((exit) => behind.has(exit));
    for (const family of this.families) {
      if (open.length === 0) break;
      const { problem, kernel } = family;
      const entries: Entry[] = moments.flatMap((moment) =>
        this.slipped(family, moment).map(({ vector, edges }) => ({
          location: edges[edges.length - 1].to,
          vector,
          cost: 0,
        })),
      );
      const have = haveOf(problem, kernel, graph, entries, this.parts.budget);
      open = open.filter((exit) => !excludes(family, have, exit));
    }
    return open.length === 0;
  }

  /** Some real tables right behind the slip, spread over its ways and the choices before it. */
  *examples({ moments }: PossibleSlip, most: number): Generator<SlippedPath> {
    const [family] = this.families;
    if (family === undefined) return;
    const all = moments.flatMap((moment) => this.slipped(family, moment, true));
    const step = Math.max(1, Math.floor(all.length / most));
    for (let i = 0; i < all.length; i += step) yield this.told(family, all[i]);
  }

  private tryFamily(
    family: Family,
    moment: SlipMoment,
    fails: (key: string, cost: number, way: () => SlippedPath | undefined) => void,
  ): void {
    const { kernel, need, have } = family;
    const { graph, budget } = this.parts;
    const last = moment.decisions[moment.decisions.length - 1];
    const scratch = kernel.zero();
    const before = this.slipped(family, { ...moment, decisions: moment.decisions.slice(0, -1) });
    const rowsAt = new Map<number, readonly { readonly row: number; readonly vector: Vector }[]>();
    for (const come of before) {
      const at = come.edges.length === 0 ? moment.at : come.edges[come.edges.length - 1].to;
      if (!budget.spend(last.length)) throw new BudgetEnded('budget ended while slips were judged');
      for (const edge of last) {
        if (edge.from !== at) continue;
        let rows = rowsAt.get(edge.to);
        if (rows === undefined) {
          rows = (need.at[edge.to] ?? []).map((row) => ({ row, vector: need.rows.vector(row) }));
          rowsAt.set(edge.to, rows);
        }
        if (rows.length === 0) continue;
        kernel.push(come.vector, edge, scratch);
        const broken = rows.find(({ vector }) => kernel.value(vector, scratch) !== 0);
        if (broken === undefined) continue;
        const cost = have.tables.cost[come.table] + need.rows.cost[broken.row];
        fails(String(edge.key), cost, () => {
          const { start, path } = this.told(family, come);
          return { start, path: [...path, edge, ...pathOf(need, graph, broken.row)] };
        });
      }
    }
  }

  /** Tables that come to a moment and through its decisions: one for each independent vector, or all of them. */
  private slipped(family: Family, moment: SlipMoment, all = false): Come[] {
    const { kernel, have, problem } = family;
    const at = (location: number): Come[] =>
      (have.at[location] ?? []).map((table) => ({ vector: have.tables.vector(table), table, edges: [] }));
    const through = (comes: readonly Come[], edges: readonly Edge[]): Come[] => {
      const bases = new Map<number, ReturnType<typeof echelonOver>>();
      const kept: Come[] = [];
      for (const come of comes) {
        const from = come.edges.at(-1)?.to;
        for (const edge of edges) {
          if (from !== undefined && edge.from !== from) continue;
          const vector = kernel.zero();
          kernel.push(come.vector, edge, vector);
          let basis = bases.get(edge.to);
          if (basis === undefined) bases.set(edge.to, (basis = echelonOver(problem.p, problem.width)));
          if (basis.insert(vector.slice()) || all)
            kept.push({ ...come, vector, edges: [...come.edges, edge] });
        }
      }
      return kept;
    };
    const { by, decisions } = moment;
    let comes: Come[];
    if (by === undefined) comes = at(moment.at);
    else comes = by.flatMap((edge) => through(at(edge.from), [edge]));
    // Tables that came by different edges may say the same.
    if (by !== undefined && !all) comes = this.independent(family, comes);
    for (const edges of decisions) comes = through(comes, edges);
    return comes;
  }

  private independent({ problem }: Family, comes: readonly Come[]): Come[] {
    const basis = echelonOver(problem.p, problem.width);
    return comes.filter(({ vector }) => basis.insert(vector.slice()));
  }

  /** The performance that leads to a table and through the slip's edges. */
  private told({ problem, have }: Family, { table, edges }: Come): SlippedPath {
    const { graph, starts } = this.parts;
    const path: Edge[] = [];
    let at = table;
    for (; have.tables.parent[at] >= 0; at = have.tables.parent[at])
      path.push(graph.edges[have.tables.edge[at]]);
    const entry = -1 - have.tables.parent[at];
    const start = starts.spanning[Math.floor(entry / problem.members.length)];
    return { start, path: [...path.reverse(), ...edges] };
  }

  private stuckWay(moment: SlipMoment, edge: Edge): SlippedPath | undefined {
    const { graph, region, starts, budget } = this.parts;
    const dead = new Set(region.stuck);
    const find = (from: number, isTarget: (id: number) => boolean) =>
      cheapestPath(graph, [{ location: from, cost: 0 }], isTarget, budget)?.path;
    const [by] = moment.by ?? [];
    const to = find(graph.start, (id) => id === (by?.from ?? moment.at));
    const between: Edge[] = by === undefined ? [] : [by];
    // Of a slip of several decisions, some first ones lead to where the last is made.
    for (const some of moment.decisions.slice(0, -1)) {
      const step = some.find((one) => one.to === edge.from);
      if (step === undefined) return undefined;
      between.push(step);
    }
    const after = find(edge.to, (id) => dead.has(id));
    if (to === undefined || after === undefined) return undefined;
    return { start: starts.base, path: [...to, ...between, edge, ...after] };
  }
}

/**
 * Whether no table of the affine hull of those that are reached at an exit satisfies the sentence's equations there: then none that is
 * reached does. With tables t and rows r that is so when the ones are a combination of the rows r(t).
 */
function excludes({ problem, kernel, need }: Family, have: Have, exit: number): boolean {
  const tables = have.at[exit] ?? [];
  if (tables.length === 0) return true;
  const span = echelonOver(problem.p, tables.length);
  const packed = (values: readonly number[]): Vector => {
    if (problem.p !== 2) return Int32Array.from(values);
    const words = new Uint32Array((values.length + 31) >>> 5);
    values.forEach((value, i) => {
      if (value === 1) words[i >>> 5] |= 1 << (i & 31);
    });
    return words;
  };
  const constant = problem.width - problem.m;
  for (const row of need.at[exit] ?? [])
    span.insert(
      packed(tables.map((table) => kernel.value(need.rows.vector(row), have.tables.vector(table)))),
    );
  return span.reduces(packed(tables.map((table) => kernel.entry(have.tables.vector(table), constant))));
}
