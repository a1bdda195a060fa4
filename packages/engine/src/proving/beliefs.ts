import { START, type Key } from '../moves/move.ts';
import type { Budget } from '../base/budget.ts';
import { SetDigest } from '../base/digest.ts';
import { BudgetEnded, type Edge, type Graph, type Location } from '../routine/graph.ts';
import type { Instruction } from '../routine/program.ts';
import type { StartTable } from '../routine/starts.ts';
import { isUnseen, type Known } from '../routine/sight.ts';
import { seenAt } from '../routine/table.ts';
import type { SlotView } from '../claims/formula.ts';
import type { Classes } from './classes.ts';
import type { Way } from './exact.ts';
import { States } from './states.ts';

/**
 * What the performer can tell apart. A belief is the set of all (location, table) pairs that agree with everything that was
 * public so far; the performer's choice may rest on the belief and on nothing else.
 */
export interface Belief {
  readonly id: number;
  /** Numbers of states, ascending. */
  readonly states: readonly number[];
  /** One of them, for what they all share: the place in the working. */
  readonly location: Location;
  readonly turn: 'performer' | 'spectator' | 'end';
}

/** What everybody learns at a moment: a choice that was made openly, or what a look in full view shows. */
export interface PublicEvent {
  readonly is: 'choice' | 'sight';
  readonly location: number;
  readonly key: Key;
}

export interface Arrival {
  readonly belief: number;
  readonly learned: readonly PublicEvent[];
}

/** Where one choice leads: the beliefs it may turn into by what becomes visible. */
export interface Branch {
  /** Undefined where the choice is hidden from the performer, or where there is none. */
  readonly key: Key | undefined;
  readonly to: readonly Arrival[];
  /** The spectator may go on with an endless repetition here. */
  readonly again: boolean;
}

type Turn = Belief['turn'];

export class Beliefs {
  readonly all: Belief[] = [];
  private readonly byKey = new Map<string, number>();
  private readonly states: States;
  private readonly roots: StartTable[] = [];
  private readonly rootOf = new Map<number, number>();
  private readonly codes: Uint16Array;
  private readonly next: Uint16Array;
  private readonly graph: Graph;
  private readonly classes: Classes;
  private readonly known: Known;
  private readonly budget: Budget;
  private readonly counters: readonly string[];
  private readonly unseen = new Map<number, boolean>();
  readonly view: SlotView;

  constructor(graph: Graph, classes: Classes, known: Known, budget: Budget) {
    this.graph = graph;
    this.classes = classes;
    this.known = known;
    this.budget = budget;
    this.states = new States(graph.cards, classes.codes > 256);
    this.codes = new Uint16Array(graph.cards);
    this.next = new Uint16Array(graph.cards);
    this.counters = graph.program.instructions.flatMap((i) => (i.do === 'each' ? [i.step.counter] : []));
    this.view = {
      card: (slot) => classes.cardOf(this.codes[slot]),
      bit: (slot, bit) => classes.bitOf(this.codes[slot], graph.bits.indexOf(bit)),
    };
  }

  /** How many (location, table) pairs were met. */
  get tables(): number {
    return this.states.count;
  }

  /** What the performer believes at the start: nothing that the set-up leaves open is known. */
  begin(starts: Iterable<StartTable>): Arrival[] {
    const first: number[] = [];
    for (const start of starts) {
      start.cards.forEach((card, slot) => (this.codes[slot] = this.classes.codeOf(card, start.bits[slot])));
      const before = this.states.count;
      const state = this.arrive(this.graph.start, this.codes, -1, -1);
      if (this.states.count > before) this.rootOf.set(state, this.roots.push(start) - 1);
      first.push(state);
    }
    const open = this.graph.locations[this.graph.start].at < 0;
    return this.group(open ? this.runHidden(first) : first, []);
  }

  /** Loads a state's table into `view`. */
  load(state: number): Location {
    this.states.read(state, this.codes);
    return this.graph.locations[this.states.locationOf(state)];
  }

  /** The way in which a state was met first. */
  wayTo(state: number): Way {
    const path: Edge[] = [];
    let at = state;
    for (; this.states.viaOf(at) >= 0; at = this.states.parentOf(at))
      path.push(this.graph.edges[this.states.viaOf(at)]);
    return this.way(at, path.reverse());
  }

  /** A way to a state that goes through these beliefs one after the other, the choices named leading from each to the next. */
  wayThrough(beliefs: readonly { readonly id: number; readonly key: Key | undefined }[], state: number): Way {
    let at = state;
    const parts: Edge[][] = [];
    for (let i = beliefs.length - 2; i >= 0; i--) {
      const { edges, from } = this.wayWithin(this.all[beliefs[i].id], beliefs[i].key, at);
      parts.push(edges);
      at = from;
    }
    const start = this.wayTo(at);
    return this.way(this.rootStateOf(at), [...start.path, ...parts.reverse().flat()]);
  }

  /** A state of the belief in which the working cannot go on, if there is one. */
  stuckIn(belief: Belief): number | undefined {
    return belief.states.find((state) => {
      const here = this.load(state);
      return (
        !here.exit &&
        this.graph.waysFrom(here.id, seenAt(this.graph, here, this.view), this.budget).stuck !== undefined
      );
    });
  }

  /** The choices at a belief and the beliefs they lead to; none where the performer cannot tell what is possible. */
  branches(belief: Belief): Branch[] {
    const instruction = this.graph.instructionOf(belief.location);
    if (instruction === undefined || belief.turn === 'end') return [];
    if (belief.turn === 'spectator' && instruction.do === 'move' && !this.known(instruction.step))
      return [{ key: undefined, to: this.group(this.runHidden(belief.states), []), again: false }];
    const byKey = new Map<Key, { states: number[]; froms: number }>();
    let single = true;
    for (const state of belief.states) {
      const edges = this.edgesFrom(state);
      if (edges.length !== 1) single = false;
      for (const edge of edges) {
        let entry = byKey.get(edge.key);
        if (entry === undefined) byKey.set(edge.key, (entry = { states: [], froms: 0 }));
        entry.states.push(this.after(state, edge));
        entry.froms++;
      }
    }
    const { id } = belief.location;
    // The small decisions of one move are told together, so that those without a choice are told too.
    const told = byKey.size > 1 || (instruction.do === 'move' && belief.turn === 'spectator');
    const event = (is: PublicEvent['is'], key: Key): PublicEvent[] =>
      told ? [{ is, location: id, key }] : [];
    if (belief.turn === 'performer') {
      // Where the sentence leaves nothing to choose, doing it tells the performer what hung on the table, such as a number counted.
      if (single) {
        const to = [...byKey].flatMap(([key, { states }]) => this.group(states, event('sight', key)));
        return [{ key: byKey.size === 1 ? [...byKey.keys()][0] : undefined, to, again: false }];
      }
      return [...byKey]
        .filter(([, { froms }]) => froms === belief.states.length)
        .map(([key, { states }]) => ({ key, to: this.group(states, []), again: false }));
    }
    const endless = instruction.do === 'repeat';
    return [...byKey].map(([key, { states }]) => ({
      key,
      to: this.group(states, event('choice', key)),
      again: endless && key === 'again',
    }));
  }

  /** Names a belief by what it holds, the same for every run on the same routine and the same classes. */
  digestOf(belief: Belief): string {
    const digest = new SetDigest();
    for (const state of belief.states) {
      const here = this.load(state);
      digest.add(`${here.key}|${this.codes.join()}`);
    }
    return digest.hex();
  }

  private way(root: number, path: readonly Edge[]): Way {
    const start = this.roots[this.rootOf.get(root) ?? 0];
    return { start, path, cost: path.reduce((sum, edge) => sum + edge.cost, 0) };
  }

  private rootStateOf(state: number): number {
    let at = state;
    while (this.states.viaOf(at) >= 0) at = this.states.parentOf(at);
    return at;
  }

  private edgesFrom(state: number): readonly Edge[] {
    const here = this.load(state);
    return this.graph.waysFrom(here.id, seenAt(this.graph, here, this.view), this.budget).edges;
  }

  /** From some state of a belief to `target` by one public choice, or by a hidden step, and what is then done unseen. */
  private wayWithin(belief: Belief, key: Key | undefined, target: number): { edges: Edge[]; from: number } {
    const back = new Map<number, { edge: Edge; before: number }>();
    const open: number[] = [];
    const meet = (before: number, edge: Edge): void => {
      const next = this.after(before, edge);
      if (back.has(next) || (belief.states.includes(next) && next !== target)) return;
      back.set(next, { edge, before });
      open.push(next);
    };
    const hidden = key === undefined;
    for (const state of belief.states)
      for (const edge of this.edgesFrom(state)) if (hidden || edge.key === key) meet(state, edge);
    const { at } = belief.location;
    for (let i = 0; i < open.length && !back.has(target); i++) {
      const here = this.load(open[i]);
      const inside = hidden && here.at === at && here.phase !== START;
      if (inside || this.isUnseenAt(here)) for (const edge of this.edgesFrom(open[i])) meet(open[i], edge);
    }
    const edges: Edge[] = [];
    let from = target;
    do {
      const step = back.get(from);
      // The caller names beliefs that follow one another.
      if (step === undefined) throw new Error('no way from one belief to the next');
      edges.push(step.edge);
      from = step.before;
    } while (!belief.states.includes(from));
    return { edges: edges.reverse(), from };
  }

  private arrive(location: number, codes: Uint16Array, edge: number, from: number): number {
    const before = this.states.count;
    const state = this.states.find(location, codes);
    if (this.states.count > before) {
      if (!this.budget.spend()) throw new BudgetEnded('budget ended in the search for a rule');
      this.states.reach(state, from, edge, 0);
    }
    return state;
  }

  private after(state: number, edge: Edge): number {
    this.states.read(state, this.codes);
    const { from, ops } = edge.effect;
    for (let s = 0; s < from.length; s++) {
      const map = ops === null || ops[s] === 0 ? null : this.classes.under(ops[s]);
      this.next[s] = map === null ? this.codes[from[s]] : map[this.codes[from[s]]];
    }
    return this.arrive(edge.to, this.next, edge.id, state);
  }

  /** Every way a hidden step may go, to its end: the performer sees that it is over, not what was done. */
  private runHidden(states: readonly number[]): number[] {
    const { at } = this.graph.locations[this.states.locationOf(states[0])];
    return this.run(states, (to) => to.at !== at || (at >= 0 && to.phase === START));
  }

  /** What may be done altogether out of sight before the next thing that is seen. */
  private runUnseen(states: readonly number[]): number[] {
    const ready: number[] = [];
    const open: number[] = [];
    for (const state of states)
      (this.isUnseenAt(this.graph.locations[this.states.locationOf(state)]) ? open : ready).push(state);
    return open.length === 0 ? ready : [...ready, ...this.run(open, (to) => !this.isUnseenAt(to))];
  }

  private run(states: readonly number[], isOver: (to: Location) => boolean): number[] {
    const ended = new Set<number>();
    const open = [...new Set(states)];
    const seen = new Set(open);
    for (let i = 0; i < open.length; i++) {
      const here = this.load(open[i]);
      const ways = this.graph.waysFrom(here.id, seenAt(this.graph, here, this.view), this.budget);
      for (const edge of ways.edges) {
        const next = this.after(open[i], edge);
        if (isOver(this.graph.locations[edge.to])) ended.add(next);
        else if (!seen.has(next)) {
          seen.add(next);
          open.push(next);
        }
      }
      // A dead end stays in the belief, where it is found to be one.
      if (ways.stuck !== undefined) ended.add(open[i]);
    }
    return [...ended];
  }

  private isUnseenAt(here: Location): boolean {
    let known = this.unseen.get(here.at);
    if (known === undefined) {
      const step = stepOf(this.graph.instructionOf(here));
      this.unseen.set(here.at, (known = step !== undefined && isUnseen(step, this.known)));
    }
    return known;
  }

  /** Sorts states by what becomes visible: where the working stands, and what a look in full view shows. */
  private group(states: readonly number[], learned: readonly PublicEvent[]): Arrival[] {
    const groups = new Map<string, { states: number[]; location: Location; shown: Key | undefined }>();
    for (const state of new Set(this.runUnseen(states))) {
      const here = this.load(state);
      const instruction = this.graph.instructionOf(here);
      const open = instruction?.do === 'move' && here.looks && this.known(instruction.step);
      const shown = open ? seenAt(this.graph, here, this.view) : undefined;
      const counted = this.counters.map((name) => here.numbers[name] ?? '').join();
      const key = `${here.at}/${String(here.phase)}/${counted}/${typeof shown}${String(shown)}`;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, { states: [state], location: here, shown });
      else group.states.push(state);
    }
    const several = groups.size > 1;
    return [...groups.values()].map(({ states: members, location, shown }) => {
      const sight: PublicEvent[] =
        several && shown !== undefined ? [{ is: 'sight', location: location.id, key: shown }] : [];
      return { belief: this.numberOf(members), learned: [...learned, ...sight] };
    });
  }

  private numberOf(states: number[]): number {
    states.sort((a, b) => a - b);
    const key = states.join();
    const known = this.byKey.get(key);
    if (known !== undefined) return known;
    // There may be far more beliefs than states, and each takes room for all of its own.
    if (!this.budget.spend(states.length)) throw new BudgetEnded('budget ended in the search for a rule');
    const location = this.graph.locations[this.states.locationOf(states[0])];
    const id = this.all.length;
    this.all.push({ id, states, location, turn: this.turnAt(location) });
    this.byKey.set(key, id);
    return id;
  }

  private turnAt(location: Location): Turn {
    if (location.exit) return 'end';
    const step = stepOf(this.graph.instructionOf(location));
    return step !== undefined && 'who' in step && step.who === 'performer' ? 'performer' : 'spectator';
  }
}

function stepOf(instruction: Instruction | undefined) {
  return instruction !== undefined && 'step' in instruction ? instruction.step : undefined;
}
