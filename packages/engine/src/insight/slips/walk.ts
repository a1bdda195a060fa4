import type { Budget } from '../../base/budget.ts';
import { holds, readsOf, type SlotView } from '../../claims/formula.ts';
import type { Key } from '../../moves/move.ts';
import { classesOf, type Classes } from '../../proving/classes.ts';
import { looksOf } from '../../proving/looks.ts';
import type { Meanings } from '../../proving/question.ts';
import { States } from '../../proving/states.ts';
import { BudgetEnded, type Edge, type Graph } from '../../routine/graph.ts';
import type { Starts } from '../../routine/starts.ts';
import { seenAt } from '../../routine/table.ts';
import type { SlippedPath } from './affine.ts';
import type { PossibleSlip, Sighting } from './possible.ts';

/** What trying everything says of one slip and one sentence. */
export interface WalkJudged {
  readonly comesOut: boolean;
  readonly failure: SlippedPath | undefined;
}

export interface Walked {
  readonly each: readonly WalkJudged[];
  /** Some performance makes all sentences true. */
  readonly together: boolean;
}

interface Parts {
  readonly graph: Graph;
  readonly starts: Starts;
  /** One for each sentence. */
  readonly meanings: readonly Meanings[];
}

/** A table on its way through a slip. */
interface Slipped {
  readonly codes: Uint16Array;
  readonly path: readonly Edge[];
  readonly at: number;
}

/** Tables with where they stand, how they came about, and no two alike. */
class Walk {
  readonly states: States;
  readonly edges: (readonly Edge[])[] = [];
  readonly parents: number[] = [];
  readonly codes: Uint16Array;
  readonly view: SlotView;
  private readonly classes: Classes;
  private readonly graph: Graph;

  constructor(graph: Graph, classes: Classes) {
    this.graph = graph;
    this.classes = classes;
    this.states = new States(graph.cards, classes.codes > 256);
    this.codes = new Uint16Array(graph.cards);
    this.view = {
      card: (slot) => classes.cardOf(this.codes[slot]),
      bit: (slot, bit) => classes.bitOf(this.codes[slot], graph.bits.indexOf(bit)),
    };
  }

  add(location: number, codes: ArrayLike<number>, parent: number, edges: readonly Edge[]): boolean {
    const before = this.states.count;
    this.states.find(location, codes);
    if (this.states.count === before) return false;
    this.parents.push(parent);
    this.edges.push(edges);
    return true;
  }

  read(state: number): number {
    this.states.read(state, this.codes);
    return this.states.locationOf(state);
  }

  after(codes: Uint16Array, edge: Edge): Uint16Array {
    const { from, ops } = edge.effect;
    return Uint16Array.from(from, (old, slot) => {
      const map = ops === null || ops[slot] === 0 ? null : this.classes.under(ops[slot]);
      return map === null ? codes[old] : map[codes[old]];
    });
  }

  /** Edges from where the walk began to a state, and the state it began with. */
  wayTo(state: number): { readonly root: number; readonly path: readonly Edge[] } {
    const parts: (readonly Edge[])[] = [];
    let at = state;
    for (; this.parents[at] >= 0; at = this.parents[at]) parts.push(this.edges[at]);
    parts.push(this.edges[at]);
    return { root: -1 - this.parents[at], path: parts.reverse().flat() };
  }

  /** Goes on from everything added, in order, to the end of each performance. */
  run(budget: Budget, visit: (state: number, location: number, isStuck: boolean) => void): void {
    for (let state = 0; state < this.states.count; state++) {
      if (!budget.spend()) throw new BudgetEnded('too many tables');
      const location = this.graph.locations[this.read(state)];
      const seen = location.looks ? seenAt(this.graph, location, this.view) : undefined;
      const ways = location.exit
        ? { edges: [], stuck: undefined }
        : this.graph.waysFrom(location.id, seen, budget);
      visit(state, location.id, ways.stuck !== undefined);
      const codes = this.codes.slice();
      for (const edge of ways.edges) this.add(edge.to, this.after(codes, edge), state, [edge]);
    }
  }
}

/** Slips tried out on every table that can come to them, cards told apart by what anybody looks at. */
export class SlipWalk {
  private readonly parts: Parts;
  private walk: Walk;
  private classes: Classes;
  private readonly attributes: Set<string>;
  private readonly bits: Set<string>;
  private readonly byLocation = new Map<number, number[]>();
  readonly sightings: Sighting[] = [];

  /** Throws BudgetEnded where there are too many tables. */
  constructor(parts: Parts, budget: Budget) {
    this.parts = parts;
    const looks = looksOf(parts.graph);
    this.attributes = looks.attributes;
    this.bits = looks.bits;
    [this.classes, this.walk] = this.explored(budget);
  }

  /** One answer for each sentence. Throws BudgetEnded. */
  judge({ moments }: PossibleSlip, budget: Budget): Walked {
    for (;;) {
      const found = this.tried(moments, budget);
      if (found !== null) return found;
      // Some end reads more of the cards than was told apart.
      [this.classes, this.walk] = this.explored(budget);
    }
  }

  private tried(moments: PossibleSlip['moments'], budget: Budget): Walked | null {
    const { graph, meanings } = this.parts;
    const slipped = new Walk(graph, this.classes);
    for (const { at, by, seen, decisions } of moments) {
      const paths: Edge[][] = by === undefined ? [[]] : by.map((edge) => [edge]);
      for (const first of paths) {
        const from = first[0]?.from ?? at;
        for (const state of this.byLocation.get(from) ?? []) {
          this.walk.read(state);
          // Where a move looks, its ways are there only for tables on which just that is seen.
          if (!this.isThere(from, first[0], seen)) continue;
          let all: Slipped[] = [{ codes: Uint16Array.from(this.walk.codes), path: [], at: from }];
          for (const edges of [first, ...decisions]) {
            if (edges.length === 0) continue;
            all = all.flatMap(({ codes, path, at: here }) =>
              edges
                .filter((edge) => edge.from === here)
                .map((edge) => ({ codes: slipped.after(codes, edge), path: [...path, edge], at: edge.to })),
            );
          }
          if (!budget.spend(all.length)) throw new BudgetEnded('too many tables');
          for (const { codes, path, at: here } of all) slipped.add(here, codes, -1 - state, path);
        }
      }
    }
    const comesOut = meanings.map(() => false);
    const failing: number[] = meanings.map(() => -1);
    let more = false;
    let together = false;
    slipped.run(budget, (state, location, isStuck) => {
      if (!isStuck && !graph.locations[location].exit) return;
      let all = true;
      meanings.forEach((meaning, i) => {
        const formula = isStuck ? undefined : meaning.at(location)?.formula;
        if (formula !== undefined && this.reads(formula)) more = true;
        if (formula !== undefined && holds(formula, slipped.view)) comesOut[i] = true;
        else {
          all = false;
          if (failing[i] < 0) failing[i] = state;
        }
      });
      together ||= all;
    });
    if (more) return null;
    const each = meanings.map((_, i) => ({
      comesOut: comesOut[i],
      failure: failing[i] < 0 ? undefined : this.told(slipped, failing[i]),
    }));
    return { each, together };
  }

  private isThere(location: number, edge: Edge | undefined, wanted: Key | undefined): boolean {
    const { graph } = this.parts;
    const here = graph.locations[location];
    if (!here.looks) return true;
    const seen = seenAt(graph, here, this.walk.view);
    return edge === undefined ? seen === wanted : graph.waysFrom(location, seen).edges.includes(edge);
  }

  private told(slipped: Walk, state: number): SlippedPath {
    const { root, path } = slipped.wayTo(state);
    const { root: start, path: before } = this.walk.wayTo(root);
    return { start: [...this.parts.starts.all()][start], path: [...before, ...path] };
  }

  private reads(formula: Parameters<typeof readsOf>[0]): boolean {
    const reads = readsOf(formula);
    let more = false;
    for (const name of reads.attributes)
      if (!this.attributes.has(name)) more = Boolean(this.attributes.add(name));
    for (const name of reads.bits) if (!this.bits.has(name)) more = Boolean(this.bits.add(name));
    return more;
  }

  private explored(budget: Budget): [Classes, Walk] {
    const { graph, starts, meanings } = this.parts;
    for (;;) {
      const classes = classesOf(starts.universe, this.attributes, this.bits, graph);
      const walk = new Walk(graph, classes);
      this.byLocation.clear();
      this.sightings.length = 0;
      const sights = new Set<string>();
      let more = false;
      let number = 0;
      for (const start of starts.all()) {
        const codes = Uint16Array.from(start.cards, (card, slot) => classes.codeOf(card, start.bits[slot]));
        walk.add(graph.start, codes, -1 - number++, []);
      }
      walk.run(budget, (state, id) => {
        const location = graph.locations[id];
        const known = this.byLocation.get(id);
        if (known === undefined) this.byLocation.set(id, [state]);
        else known.push(state);
        const seen = location.looks ? seenAt(graph, location, walk.view) : undefined;
        const sight = `${id} ${typeof seen} ${seen}`;
        if (!sights.has(sight)) this.sightings.push({ location: id, seen });
        sights.add(sight);
        if (!location.exit) return;
        for (const meaning of meanings) {
          const formula = meaning.at(id)?.formula;
          if (formula !== undefined && this.reads(formula)) more = true;
        }
      });
      if (!more) return [classes, walk];
    }
  }
}
