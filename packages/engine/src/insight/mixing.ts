import { Budget } from '../base/budget.ts';
import { seeded } from '../base/seeded.ts';
import type { Decision } from '../proving/decision.ts';
import { classesOf } from '../proving/classes.ts';
import { exactSearch } from '../proving/exact.ts';
import type { Graph } from '../routine/graph.ts';
import type { TableSlots } from '../routine/starts.ts';
import { afterEdge, seenAt, slotView } from '../routine/table.ts';

/** How many different tables the working can end with. */
export type FinalOrders =
  | { readonly is: 'exact'; readonly orders: string }
  /** More than could be followed. */
  | { readonly is: 'at least'; readonly orders: string };

/** How mixed the cards look at the end, from performances with every choice taken at random. */
export interface Looks {
  readonly runs: number;
  readonly seed: number;
  /** Mean number of places a card travels, and what it is for a well mixed packet. */
  readonly travel: number;
  readonly travelMixed: number;
  /** Mean number of rising sequences, and what it is for a well mixed packet. */
  readonly rising: number;
  readonly risingMixed: number;
  /** Share of cards that still lie directly under the card they lay under, and what it is for a well mixed packet. */
  readonly neighbours: number;
  readonly neighboursMixed: number;
}

export interface Mixing {
  readonly performances: string | null;
  readonly orders: FinalOrders | null;
  /** Null where cards are shuffled freely: then they are as mixed as can be, if the shuffle is a good one. */
  readonly looks: Looks | null;
}

// A random performance longer than this is given up.
const MOST_STEPS = 20_000;

/**
 * How many performances and final orders there are, and how mixed the cards look. Orders are counted by following every table with all
 * cards told apart, up to `states` of them; looks are sampled and say so.
 */
export function mixingOf(decision: Decision, states: number, runs: number, seed: number): Mixing {
  return {
    performances: decision.performances === null ? null : String(decision.performances),
    orders: finalOrders(decision, states),
    looks: looksOf(decision, runs, seed),
  };
}

function finalOrders({ graph, starts }: Decision, states: number): FinalOrders | null {
  const bits = new Set(graph.bits.names);
  const classes = classesOf(starts.universe, new Set(['id']), bits, graph);
  const found = new Set<string>();
  const result = exactSearch(graph, classes, [starts.base], new Budget(states), (location, table) => {
    if (!graph.locations[location].exit) return 'go on';
    let key = '';
    for (let slot = 0; slot < graph.cards; slot++) {
      key += String.fromCharCode(table.card(slot).id, 1 + table.bit(slot, 'up') + 2 * table.bit(slot, 'end'));
    }
    found.add(`${location} ${key}`);
    return 'halt';
  });
  if (result.ended !== undefined) return null;
  return { is: result.complete ? 'exact' : 'at least', orders: String(found.size) };
}

function looksOf({ graph, starts }: Decision, runs: number, seed: number): Looks | null {
  const n = graph.cards;
  if (n < 2 || scattersSomewhere(graph)) return null;
  const random = seeded(seed);
  const where = new Map(starts.base.cards.map((card, slot) => [card.id, slot]));
  let [done, travel, rising, neighbours] = [0, 0, 0, 0];
  for (let run = 0; run < runs; run++) {
    let table: TableSlots = starts.base;
    let at = graph.start;
    for (let step = 0; step < MOST_STEPS && !graph.locations[at].exit; step++) {
      const { edges } = graph.waysFrom(at, seenAt(graph, graph.locations[at], slotView(table, graph)));
      if (edges.length === 0) break;
      const total = edges.reduce((sum, { weight }) => sum + weight, 0);
      let left = random() * total;
      const edge = edges.find(({ weight }) => (left -= weight) < 0) ?? edges[edges.length - 1];
      table = afterEdge(table, edge);
      at = edge.to;
    }
    if (!graph.locations[at].exit) continue;
    const old = table.cards.map(({ id }) => where.get(id) ?? 0);
    done++;
    travel += old.reduce((sum, from, to) => sum + Math.abs(from - to), 0) / n;
    rising += risingSequences(old);
    neighbours += old.slice(1).filter((from, i) => from === old[i] + 1).length / (n - 1);
  }
  if (done === 0) return null;
  return {
    runs: done,
    seed,
    travel: travel / done,
    travelMixed: (n * n - 1) / (3 * n),
    rising: rising / done,
    risingMixed: (n + 1) / 2,
    neighbours: neighbours / done,
    neighboursMixed: 1 / n,
  };
}

/** A free shuffle is no walk of exchanges: its options, taken one by one at random, would tell nothing of how people mix. */
function scattersSomewhere(graph: Graph): boolean {
  return graph.program.instructions.some(
    (instruction) => instruction.do === 'move' && instruction.move.scatters !== undefined,
  );
}

/** Maximal chains of cards that followed one another at first and still lie in that order from the top; `old` are old places from the top. */
export function risingSequences(old: readonly number[]): number {
  const now = new Map(old.map((from, to) => [from, to]));
  let count = 1;
  for (let from = 1; from < old.length; from++) if ((now.get(from) ?? 0) < (now.get(from - 1) ?? 0)) count++;
  return count;
}
