import type { Vector } from '../../base/echelon.ts';
import type { Edge } from '../../routine/graph.ts';
import type { LittleGraph } from '../altering/mix.ts';
import { momentKey } from './moment-key.ts';
import { passageFor, type Passage } from './passage.ts';
import type { Family, Probed } from '../altering/probed.ts';
import { SpanSearch } from '../altering/span-search.ts';
import type { Whole } from '../altering/whole.ts';

/** An edge of a mix; `from` and `to` are its nodes. */
export interface MixEdge {
  readonly from: number;
  readonly to: number;
  readonly effect: Whole;
}

/** A mix put in at one location: a graph of its own from `start` to `end`, with the edges into each node. */
export interface PutIn {
  readonly start: number;
  readonly end: number;
  /** Nodes are numbered below this. */
  readonly size: number;
  readonly into: readonly (readonly MixEdge[] | undefined)[];
}

/** A mix that is one of several rearrangements. */
export function oneOf(wholes: readonly Whole[]): PutIn {
  return {
    start: 0,
    end: 1,
    size: 2,
    into: [undefined, wholes.map((effect) => ({ from: 0, to: 1, effect }))],
  };
}

/** A mix decision by decision. */
export function putIn({ start, end, edges }: LittleGraph): PutIn {
  const into: MixEdge[][] = [];
  let size = Math.max(start, end) + 1;
  for (const edge of edges) {
    size = Math.max(size, edge.to + 1, edge.from + 1);
    (into[edge.to] ??= []).push(edge);
  }
  return { start, end, size, into };
}

/**
 * One place of the working and one family of equations: what arrives there, what is needed from there on, and what lies between two
 * visits of it. A mix put in there is done at each visit, so what is needed between two visits has to be worked out with it.
 */
export class Visits {
  /** The locations that are the place. */
  readonly locations: readonly number[];
  /** Whether a performance can be there more than once. */
  readonly recurs: boolean;
  /** Tables that arrive at a location without having been at the place before. */
  private readonly arriving = new Map<number, readonly Vector[]>();
  /** What must be true when a location of the place is left for the last time. */
  private readonly leaving = new Map<number, readonly Vector[]>();
  private readonly between: ReadonlySet<number>;
  private readonly into = new Map<number, Edge[]>();
  private readonly family: Family;
  private readonly passages = new Map<number, Passage>();

  constructor(probed: Probed, place: number, family: Family) {
    const { graph, region } = probed;
    const { have, need } = family;
    this.family = family;
    this.locations = probed.at[place];
    const own = new Set(this.locations);
    const behind = closure(this.locations, (id) => graph.waysFrom(id).edges.map((edge) => edge.to));
    const before = closure(this.locations, (id) => (region.into[id] ?? []).map((edge) => edge.from));
    this.between = new Set([...behind].filter((id) => before.has(id)));
    for (const id of this.between)
      for (const edge of region.into[id] ?? [])
        if (this.between.has(edge.from)) {
          const known = this.into.get(id);
          if (known === undefined) this.into.set(id, [edge]);
          else known.push(edge);
        }
    this.recurs = this.into.size > 0;
    if (!this.recurs)
      for (const id of this.locations) {
        this.arriving.set(
          id,
          (have.at[id] ?? []).map((i) => have.tables.vector(i)),
        );
        this.leaving.set(
          id,
          (need.at[id] ?? []).map((i) => need.rows.vector(i)),
        );
      }
    else {
      this.arriveFromOutside(probed, own);
      this.leaveForGood(probed, own);
    }
  }

  /** The same for places that allow just the same. */
  key(): string {
    return momentKey({
      family: this.family,
      locations: this.locations,
      arriving: (location) => this.arriving.get(location) ?? [],
      leaving: (location) => this.leaving.get(location) ?? [],
      between: [...this.into.values()].flat(),
    });
  }

  private arriveFromOutside({ graph, region, starts }: Probed, own: ReadonlySet<number>): void {
    const { problem, kernel, have } = this.family;
    const search = new SpanSearch(this.family);
    const made = kernel.zero();
    if (this.between.has(graph.start))
      for (const table of starts.spanning)
        for (const member of problem.members) search.add(graph.start, kernel.ofTable(member, table));
    for (const id of this.between)
      for (const edge of region.into[id] ?? [])
        if (!this.between.has(edge.from))
          for (const i of have.at[edge.from] ?? []) {
            kernel.push(have.tables.vector(i), edge, made);
            search.add(id, made);
          }
    search.run((id, vector) => {
      if (own.has(id)) return;
      for (const edge of graph.waysFrom(id).edges)
        if (this.between.has(edge.to)) {
          kernel.push(vector, edge, made);
          search.add(edge.to, made);
        }
    });
    for (const id of this.locations) this.arriving.set(id, search.at(id));
  }

  private leaveForGood({ graph }: Probed, own: ReadonlySet<number>): void {
    const { kernel, need } = this.family;
    const search = new SpanSearch(this.family);
    const made = kernel.zero();
    for (const id of this.between)
      for (const edge of graph.waysFrom(id).edges)
        if (!this.between.has(edge.to))
          for (const i of need.at[edge.to] ?? []) {
            kernel.pull(need.rows.vector(i), edge, made);
            search.add(id, made);
          }
    search.run((id, vector) => {
      if (own.has(id)) return;
      for (const edge of this.into.get(id) ?? []) {
        kernel.pull(vector, edge, made);
        search.add(edge.from, made);
      }
    });
    for (const id of this.locations) this.leaving.set(id, search.at(id));
  }

  /**
   * Whether a rearrangement done at one location, once, keeps the sentence certain. Where the place recurs this is only a necessary
   * condition for doing it at each visit.
   */
  stands(location: number, effect: Whole): boolean {
    let passage = this.passages.get(location);
    if (passage === undefined) {
      const [tables, rows] = [this.arriving.get(location) ?? [], this.leaving.get(location) ?? []];
      this.passages.set(location, (passage = passageFor(this.family, tables, rows)));
    }
    return passage.allows(effect);
  }

  /** A basis of the tables that come out of a mix put in at a location. */
  after(location: number, mix: PutIn): readonly Vector[] {
    const { kernel } = this.family;
    const search = new SpanSearch(this.family);
    const made = kernel.zero();
    const out: MixEdge[][] = [];
    for (const edges of mix.into) for (const edge of edges ?? []) (out[edge.from] ??= []).push(edge);
    for (const table of this.arriving.get(location) ?? []) search.add(mix.start, table);
    search.run((node, table) => {
      for (const edge of out[node] ?? []) {
        kernel.push(table, edge as Edge, made);
        search.add(edge.to, made);
      }
    });
    return search.at(mix.end);
  }

  /** A basis of what must be true before a mix put in at a location for the rest to come out right. */
  before(location: number, mix: PutIn): readonly Vector[] {
    const { kernel } = this.family;
    const search = new SpanSearch(this.family);
    const made = kernel.zero();
    for (const row of this.leaving.get(location) ?? []) search.add(mix.end, row);
    search.run((node, row) => {
      for (const edge of mix.into[node] ?? []) {
        kernel.pull(row, edge as Edge, made);
        search.add(edge.from, made);
      }
    });
    return search.at(mix.start);
  }

  holds(row: Vector, table: Vector): boolean {
    return this.family.kernel.value(row, table) === 0;
  }

  /**
   * Whether the sentence stays certain when a mix is put in at the place, done anew at each visit in any of its ways. What is needed is
   * pulled back through the mix and through all that lies between two visits until nothing new comes up.
   */
  keeps(mixes: ReadonlyMap<number, PutIn>): boolean {
    const { kernel } = this.family;
    const search = new SpanSearch(this.family);
    const made = kernel.zero();
    // A location stands for the moment before its mix; the mix's own nodes are numbered below zero.
    const offsets = new Map<number, number>();
    let offset = 1;
    for (const location of this.locations) {
      const mix = mixes.get(location);
      if (mix === undefined) continue;
      offsets.set(location, offset);
      for (const row of this.leaving.get(location) ?? []) search.add(-(offset + mix.end), row);
      offset += mix.size;
    }
    const owner = (id: number): number => {
      let found = this.locations[0];
      for (const [location, from] of offsets) if (-id >= from) found = location;
      return found;
    };
    const own = new Set(this.locations);
    const only = this.locations.length === 1 ? this.locations[0] : undefined;
    return search.run((id, vector) => {
      const location = id >= 0 ? id : (only ?? owner(id));
      const mix = mixes.get(location);
      const from = offsets.get(location);
      if (mix !== undefined && from !== undefined)
        for (const edge of mix.into[id < 0 ? -id - from : mix.start] ?? []) {
          kernel.pull(vector, edge as Edge, made);
          search.add(edge.from === mix.start ? location : -(from + edge.from), made);
        }
      if (id < 0) return true;
      if (mix !== undefined)
        for (const table of this.arriving.get(id) ?? []) if (kernel.value(vector, table) !== 0) return false;
      for (const edge of this.into.get(id) ?? []) {
        kernel.pull(vector, edge, made);
        const before = mixes.get(edge.from);
        if (before !== undefined) search.add(-((offsets.get(edge.from) ?? 0) + before.end), made);
        // A location of the place at which nothing can be done is not left.
        else if (!own.has(edge.from)) search.add(edge.from, made);
      }
      return true;
    });
  }
}

function closure(from: readonly number[], next: (id: number) => readonly number[]): Set<number> {
  const seen = new Set(from);
  for (const id of seen) for (const to of next(id)) seen.add(to);
  return seen;
}
