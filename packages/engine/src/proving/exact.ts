import type { Budget } from '../base/budget.ts';
import type { Trouble } from '../base/diagnostic.ts';
import { CostQueue } from '../base/heap.ts';
import type { SlotView } from '../claims/formula.ts';
import { BudgetEnded, type Edge, type Graph } from '../routine/graph.ts';
import type { Classes } from './classes.ts';
import type { StartTable } from '../routine/starts.ts';
import { States } from './states.ts';
import { seenAt } from '../routine/table.ts';

/** A way from a start to some state: which start, and the edges taken. */
export interface Way {
  readonly start: StartTable;
  readonly path: readonly Edge[];
  readonly cost: number;
}

/** What happens when the search takes a state from the queue: go on, do not go beyond it, or end the search here. */
export type Visit = 'go on' | 'halt' | 'end';

export interface ExactResult {
  readonly states: number;
  /** Set when `visit` or a stuck state ended the search. */
  readonly ended: { readonly way: Way; readonly stuck: Trouble | undefined } | undefined;
  /** False when the budget ended first. */
  readonly complete: boolean;
  readonly wayTo: (state: number) => Way;
}

/**
 * The complete search: every (location, table) pair that can be reached, cheapest first, tables told apart only by what
 * somebody looks at. A state where the working cannot go on ends the search, since that is a failure.
 */
export function exactSearch(
  graph: Graph,
  classes: Classes,
  starts: Iterable<StartTable>,
  budget: Budget,
  visit: (location: number, table: SlotView, state: number, cost: number) => Visit,
): ExactResult {
  const slots = graph.cards;
  const states = new States(slots, classes.codes > 256);
  const roots: StartTable[] = [];
  const rootOf: number[] = [];
  const queue = new CostQueue();
  const codes = new Uint16Array(slots);
  const next = new Uint16Array(slots);
  const kindOf = new Map<string, number>();
  const view: SlotView = {
    card: (slot) => classes.cardOf(codes[slot]),
    bit(slot, bit) {
      let kind = kindOf.get(bit);
      if (kind === undefined) kindOf.set(bit, (kind = graph.bits.indexOf(bit)));
      return classes.bitOf(codes[slot], kind);
    },
  };
  const wayTo = (state: number): Way => {
    const path: Edge[] = [];
    let at = state;
    for (; states.viaOf(at) >= 0; at = states.parentOf(at)) path.push(graph.edges[states.viaOf(at)]);
    return { start: roots[rootOf[at]], path: path.reverse(), cost: states.costOf(state) };
  };
  const result = (ended: ExactResult['ended'], complete: boolean): ExactResult => ({
    states: states.count,
    ended,
    complete,
    wayTo,
  });
  const arrive = (location: number, table: Uint16Array, cost: number, edge: number, from: number): void => {
    const before = states.count;
    const state = states.find(location, table);
    if (state < before && (states.isDone(state) || states.costOf(state) <= cost)) return;
    states.reach(state, from, edge, cost);
    queue.push(state, cost);
  };
  try {
    for (const start of starts) {
      if (!budget.spend()) return result(undefined, false);
      start.cards.forEach((card, slot) => (codes[slot] = classes.codeOf(card, start.bits[slot])));
      const before = states.count;
      arrive(graph.start, codes, 0, -1, -1);
      if (states.count > before) rootOf[states.count - 1] = roots.push(start) - 1;
    }
    while (queue.size > 0) {
      const state = queue.pop();
      if (states.isDone(state)) continue;
      states.finish(state);
      if (!budget.spend()) return result(undefined, false);
      const location = states.locationOf(state);
      const cost = states.costOf(state);
      states.read(state, codes);
      const what = visit(location, view, state, cost);
      if (what === 'end') return result({ way: wayTo(state), stuck: undefined }, true);
      if (what === 'halt') continue;
      const here = graph.locations[location];
      const ways = graph.waysFrom(location, here.looks ? seenAt(graph, here, view) : undefined, budget);
      if (ways.stuck !== undefined) return result({ way: wayTo(state), stuck: ways.stuck }, true);
      if (!budget.tick(ways.edges.length)) return result(undefined, false);
      for (const edge of ways.edges) {
        const { from, ops } = edge.effect;
        if (ops === null) for (let s = 0; s < slots; s++) next[s] = codes[from[s]];
        else
          for (let s = 0; s < slots; s++) {
            const map = ops[s] === 0 ? null : classes.under(ops[s]);
            next[s] = map === null ? codes[from[s]] : map[codes[from[s]]];
          }
        arrive(edge.to, next, cost + edge.cost, edge.id, state);
      }
    }
    return result(undefined, true);
  } catch (error) {
    if (error instanceof BudgetEnded) return result(undefined, false);
    throw error;
  }
}
