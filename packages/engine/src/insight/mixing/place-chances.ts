import type { Region } from '../../proving/region.ts';
import type { Graph } from '../../routine/graph.ts';

/** The chance of every card to end in every place: row by place at the start, column by place at the end, places counted from 0. */
export type PlaceChances = readonly Float64Array[];

// Numbers that may be kept at one time.
const MOST_NUMBERS = 30_000_000;
// Numbers that may be added up.
const MOST_WORK = 200_000_000;

/**
 * Where every card ends when all choices are made at random, exactly. Null where something may be repeated without end, where cards
 * are looked at, where a performance gets stuck, or where there is too much to keep.
 */
export function placeChances(graph: Graph, region: Region): PlaceChances | null {
  const n = graph.cards;
  if (region.stuck.length > 0 || graph.locations[graph.start].looksAhead) return null;
  if (region.edges * n * n > MOST_WORK) return null;
  const order = sorted(graph, region);
  if (order === null) return null;
  const at = new Map<number, Float64Array>();
  const begin = new Float64Array(n * n);
  for (let slot = 0; slot < n; slot++) begin[slot * n + slot] = 1;
  at.set(graph.start, begin);
  const end = new Float64Array(n * n);
  for (const id of order) {
    const here = at.get(id);
    if (here === undefined) continue;
    at.delete(id);
    if (at.size * n * n > MOST_NUMBERS) return null;
    if (graph.locations[id].exit) {
      for (let i = 0; i < end.length; i++) end[i] += here[i];
      continue;
    }
    const { edges } = graph.waysFrom(id);
    const total = edges.reduce((sum, { weight }) => sum + weight, 0);
    for (const { to, weight, effect } of edges) {
      let there = at.get(to);
      if (there === undefined) at.set(to, (there = new Float64Array(n * n)));
      const share = weight / total;
      for (let slot = 0; slot < n; slot++) {
        const from = effect.from[slot] * n;
        for (let card = 0; card < n; card++) there[slot * n + card] += share * here[from + card];
      }
    }
  }
  return Array.from({ length: n }, (_, card) =>
    Float64Array.from({ length: n }, (_p, slot) => end[slot * n + card]),
  );
}

/** Locations so that every edge leads onward; null where some lead back. */
function sorted(graph: Graph, region: Region): number[] | null {
  const left = new Map(region.order.map((id) => [id, region.into[id]?.length ?? 0]));
  const order = region.order.filter((id) => left.get(id) === 0);
  for (const id of order)
    for (const { to } of graph.waysFrom(id).edges) {
      const more = (left.get(to) ?? 0) - 1;
      left.set(to, more);
      if (more === 0) order.push(to);
    }
  return order.length === region.order.length ? order : null;
}

/** How far the final places of the cards are from even. */
export interface Evenness {
  /** Total variation distance from an even chance of every place, mean over the cards: 0 is even, near 1 is certain. */
  readonly mean: number;
  /** Mean number of places a card travels. */
  readonly travel: number;
  /** The likeliest end of any card, places counted from 1. */
  readonly worst: { readonly place: number; readonly to: number; readonly chance: number };
}

export function evennessOf(chances: PlaceChances): Evenness {
  const n = chances.length;
  let [off, travel] = [0, 0];
  let worst = { place: 1, to: 1, chance: 0 };
  chances.forEach((row, from) =>
    row.forEach((chance, to) => {
      off += Math.abs(chance - 1 / n) / 2;
      travel += chance * Math.abs(from - to);
      if (chance > worst.chance + 1e-12) worst = { place: from + 1, to: to + 1, chance };
    }),
  );
  return { mean: off / n, travel: travel / n, worst };
}
