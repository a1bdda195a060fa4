import { Budget } from '../../base/budget.ts';
import { seeded } from '../../base/seeded.ts';
import { layoutKey } from '../../pictures/layout.ts';
import type { Decision } from '../../proving/decision.ts';
import type { Limits } from '../../proving/question.ts';
import { regionFrom, type Region } from '../../proving/region.ts';
import { Graph } from '../../routine/graph.ts';
import { startsOf, type Starts, type TableSlots } from '../../routine/starts.ts';
import { afterEdge, seenAt, slotView } from '../../routine/table.ts';
import { finalOrders, waysToLie, type FinalOrders } from './final-orders.ts';
import { evennessOf, placeChances, type Evenness, type PlaceChances } from './place-chances.ts';

/** How mixed the cards look at the end, from performances with every choice taken at random. */
export interface Looks {
  readonly runs: number;
  readonly seed: number;
  /** Mean number of places a card travels. */
  readonly travel: number;
  /** Mean number of rising sequences. */
  readonly rising: number;
  /** Share of cards that still lie directly under the card they lay under. */
  readonly neighbours: number;
  /** Different final tables that were met. */
  readonly met: number;
  /** How often each card came to each place, as a share of the runs. */
  readonly places: PlaceChances;
}

/** The same for a packet in any order, each as likely as any other. */
export interface WellMixed {
  readonly travel: number;
  readonly rising: number;
  readonly neighbours: number;
}

export function wellMixed(cards: number): WellMixed {
  return { travel: (cards * cards - 1) / (3 * cards), rising: (cards + 1) / 2, neighbours: 1 / cards };
}

export interface Mixing {
  readonly performances: string | null;
  readonly orders: FinalOrders | null;
  /** All ways in which the cards could lie. */
  readonly all: bigint;
  /** Where the cards end, exactly or from the runs; null where neither was found. */
  readonly places: { readonly evenness: Evenness; readonly how: 'exact' | 'sampled' } | null;
  /** Null where cards are shuffled freely: then they are as mixed as can be, if the shuffle is a good one. */
  readonly looks: Looks | null;
}

// A random performance longer than this is given up.
const MOST_STEPS = 20_000;

/**
 * How many performances and final orders there are, and how mixed the cards are and look, from one order of the cards, whichever the
 * set-up leaves open. Orders are counted by following every table
 * with all cards told apart, up to `states` of them; looks are sampled and say so.
 */
export function mixingOf(
  decision: Decision,
  { states, runs, seed }: { readonly states: number; readonly runs: number; readonly seed: number },
  limits: Limits,
): Mixing {
  const { performances } = decision;
  const settled = settledOf(decision, limits);
  const { graph, region } = settled;
  const budget = new Budget(limits.work, limits.goOn);
  const looks = looksOf(settled, runs, seed, budget);
  const exact = looks === null ? null : placeChances(graph, region);
  const orders = finalOrders(
    { ...settled, performances },
    new Budget(states, limits.goOn),
    BigInt(looks?.met ?? 0),
  );
  return {
    performances: performances === null ? null : String(performances),
    orders,
    all: waysToLie(graph),
    places:
      exact !== null
        ? { evenness: evennessOf(exact), how: 'exact' }
        : looks === null
          ? null
          : { evenness: evennessOf(looks.places), how: 'sampled' },
    looks,
  };
}

interface Settled {
  readonly graph: Graph;
  readonly region: Region;
  readonly starts: Starts;
}

/** The working on one order of the cards: what a set-up leaves open is no mixing. */
function settledOf({ graph, region, starts }: Decision, limits: Limits): Settled {
  const { routine } = graph;
  if (routine.setUp.freedoms.length === 0 && region !== undefined) return { graph, region, starts };
  const fixed = { ...routine, setUp: { ...routine.setUp, freedoms: [] } };
  const own = new Graph(fixed);
  const budget = new Budget(limits.work, limits.goOn);
  return { graph: own, region: regionFrom(own, [own.start], budget), starts: startsOf(fixed) };
}

/** As many runs as the budget allows. */
function looksOf({ graph, starts }: Settled, runs: number, seed: number, budget: Budget): Looks | null {
  const n = graph.cards;
  if (n < 2 || scattersSomewhere(graph)) return null;
  const random = seeded(seed);
  const where = new Map(starts.base.cards.map((card, slot) => [card.id, slot]));
  const places = Array.from({ length: n }, () => new Float64Array(n));
  const met = new Set<string>();
  let [done, travel, rising, neighbours] = [0, 0, 0, 0];
  for (let run = 0; run < runs && budget.spend(n); run++) {
    let table: TableSlots = starts.base;
    let at = graph.start;
    for (let step = 0; step < MOST_STEPS && !graph.locations[at].exit && budget.tick(n); step++) {
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
    met.add(
      `${layoutKey(graph.locations[at].layout)} ${old.join()} ${Array.from(table.bits, (word) => word & 3).join('')}`,
    );
    old.forEach((from, to) => places[from][to]++);
    travel += old.reduce((sum, from, to) => sum + Math.abs(from - to), 0) / n;
    rising += risingSequences(old);
    neighbours += old.slice(1).filter((from, i) => from === old[i] + 1).length / (n - 1);
  }
  if (done === 0) return null;
  return {
    runs: done,
    seed,
    travel: travel / done,
    rising: rising / done,
    neighbours: neighbours / done,
    met: met.size,
    places: places.map((row) => row.map((count) => count / done)),
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
