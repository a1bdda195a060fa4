import { START, type Key } from '../moves/move.ts';
import type { Budget } from '../base/budget.ts';
import { BudgetEnded, type Edge, type Graph, type Location } from '../routine/graph.ts';
import type { MoveStep } from '../routine/routine.ts';
import type { StartTable } from '../routine/starts.ts';
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
  /** How it was first reached. */
  readonly from: { readonly belief: number; readonly public: string } | undefined;
}

/** Where one public choice leads: the beliefs it may turn into by what becomes visible. */
export interface Branch {
  readonly key: Key;
  readonly to: readonly number[];
  /** The spectator may go on with an endless repetition here. */
  readonly again: boolean;
}

/** Whether the performer gets to know the choice made at a step. */
export type Known = (step: MoveStep) => boolean;

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
  readonly view: SlotView;

  constructor(graph: Graph, classes: Classes, known: Known, budget: Budget) {
    this.graph = graph;
    this.classes = classes;
    this.known = known;
    this.budget = budget;
    this.states = new States(graph.cards, classes.codes > 256);
    this.codes = new Uint16Array(graph.cards);
    this.next = new Uint16Array(graph.cards);
    this.view = {
      card: (slot) => classes.cardOf(this.codes[slot]),
      bit: (slot, bit) => classes.bitOf(this.codes[slot], graph.bits.indexOf(bit)),
    };
  }

  /** What the performer believes at the start: nothing that the set-up leaves open is known. */
  begin(starts: Iterable<StartTable>): number[] {
    const first: number[] = [];
    for (const start of starts) {
      start.cards.forEach((card, slot) => (this.codes[slot] = this.classes.codeOf(card, start.bits[slot])));
      const before = this.states.count;
      const state = this.arrive(this.graph.start, this.codes, -1, -1);
      if (this.states.count > before) this.rootOf.set(state, this.roots.push(start) - 1);
      first.push(state);
    }
    const open = this.graph.locations[this.graph.start].at < 0;
    return this.group(open ? this.runHidden(first) : first, undefined, '');
  }

  /** Loads a state's table into `view`. */
  load(state: number): Location {
    this.states.read(state, this.codes);
    return this.graph.locations[this.states.location[state]];
  }

  wayTo(state: number): Way {
    const path: Edge[] = [];
    let at = state;
    for (; this.states.via[at] >= 0; at = this.states.parent[at])
      path.push(this.graph.edges[this.states.via[at]]);
    const start = this.roots[this.rootOf.get(at) ?? 0];
    return { start, path: path.reverse(), cost: path.reduce((sum, edge) => sum + edge.cost, 0) };
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

  /** The public choices at a belief and the beliefs they lead to. */
  branches(belief: Belief): Branch[] {
    const { location } = belief;
    const instruction = this.graph.instructionOf(location);
    if (instruction === undefined || location.exit) return [];
    const hidden = instruction.do === 'move' && belief.turn === 'spectator' && !this.known(instruction.step);
    if (hidden)
      return [{ key: '', to: this.group(this.runHidden(belief.states), belief.id, ''), again: false }];
    const byKey = new Map<Key, { states: number[]; count: number }>();
    for (const state of belief.states) {
      const here = this.load(state);
      const seen = seenAt(this.graph, here, this.view);
      for (const edge of this.graph.waysFrom(here.id, seen, this.budget).edges) {
        let entry = byKey.get(edge.key);
        if (entry === undefined) byKey.set(edge.key, (entry = { states: [], count: 0 }));
        entry.states.push(this.after(state, edge));
        entry.count++;
      }
    }
    const endless = instruction.do === 'repeat' && belief.turn === 'spectator';
    const branches: Branch[] = [];
    for (const [key, { states, count }] of byKey) {
      // The performer can only do what is possible whatever is hidden.
      if (belief.turn === 'performer' && count < belief.states.length) continue;
      branches.push({
        key,
        to: this.group(states, belief.id, byKey.size > 1 ? String(key) : ''),
        again: endless && key === 'again',
      });
    }
    return branches;
  }

  private arrive(location: number, codes: Uint16Array, edge: number, from: number): number {
    const before = this.states.count;
    const state = this.states.find(location, codes);
    if (this.states.count > before) {
      if (!this.budget.spend()) throw new BudgetEnded('budget ended in the search for a rule');
      this.states.via[state] = edge;
      this.states.parent[state] = from;
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
    const ended = new Set<number>();
    const open = [...new Set(states)];
    const seen = new Set(open);
    const at = this.graph.locations[this.states.location[open[0]]].at;
    for (let i = 0; i < open.length; i++) {
      const here = this.load(open[i]);
      const ways = this.graph.waysFrom(here.id, seenAt(this.graph, here, this.view), this.budget);
      for (const edge of ways.edges) {
        const next = this.after(open[i], edge);
        const to = this.graph.locations[edge.to];
        if (to.at !== at || (at >= 0 && to.phase === START)) ended.add(next);
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

  /** Sorts states by what becomes visible: where the working stands, and what a look in full view shows. */
  private group(states: readonly number[], from: number | undefined, said: string): number[] {
    const groups = new Map<string, { states: number[]; shown: string }>();
    for (const state of new Set(states)) {
      const here = this.load(state);
      const instruction = this.graph.instructionOf(here);
      const open =
        instruction?.do === 'move' &&
        here.looks &&
        (instruction.step.who === 'performer' || this.known(instruction.step));
      const seen = open ? String(seenAt(this.graph, here, this.view)) : '';
      const key = `${here.at}/${String(here.phase)}/${seen}`;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, { states: [state], shown: seen });
      else group.states.push(state);
    }
    return [...groups.values()].map(({ states: members, shown }) => {
      members.sort((a, b) => a - b);
      const key = members.join();
      const known = this.byKey.get(key);
      if (known !== undefined) return known;
      const location = this.graph.locations[this.states.location[members[0]]];
      const instruction = this.graph.instructionOf(location);
      const performer =
        instruction !== undefined &&
        'step' in instruction &&
        instruction.do !== 'each' &&
        instruction.step.who === 'performer';
      const id = this.all.length;
      const words = [said, shown].filter((word) => word !== '').join(' ');
      this.all.push({
        id,
        states: members,
        location,
        turn: location.exit ? 'end' : performer ? 'performer' : 'spectator',
        from: from === undefined ? undefined : { belief: from, public: words },
      });
      this.byKey.set(key, id);
      return id;
    });
  }
}
