import type { Budget } from '../../base/budget.ts';
import { layoutKey } from '../../pictures/layout.ts';
import type { Decision } from '../../proving/decision.ts';
import { classesOf } from '../../proving/classes.ts';
import { exactSearch } from '../../proving/exact.ts';
import type { Graph } from '../../routine/graph.ts';
import type { Step } from '../../routine/routine.ts';
import { ordersByRisingSequences } from './riffle-distance.ts';

/** How many different tables the working can end with: exactly, or between two bounds. */
export interface FinalOrders {
  readonly least: bigint;
  readonly most: bigint;
  /** `search`: every table was followed; `riffles`: by the number of rising sequences; `bounds`: neither. */
  readonly by: 'search' | 'riffles' | 'bounds';
  /** For bounds, where the greater one is from: as many as there are performances, or as many as cards can lie in. */
  readonly mostBy: 'performances' | 'orders';
}

/** A working on one order of its cards. */
export type Worked = Pick<Decision, 'graph' | 'starts' | 'performances'>;

/**
 * Counts by following every table with all cards told apart, as far as the budget goes; a working of riffles only by its rising sequences;
 * else between what was met and what can be. Null where a performance gets stuck.
 *
 * @param met final orders that are known to come about
 */
export function finalOrders(worked: Worked, budget: Budget, met: bigint): FinalOrders | null {
  const { graph, starts, performances } = worked;
  const riffles = riffleCount(graph.routine.steps);
  if (riffles !== null && riffles > 0) {
    const orders = ordersAfterRiffles(graph.cards, riffles);
    return { least: orders, most: orders, by: 'riffles', mostBy: 'orders' };
  }
  const classes = classesOf(starts.universe, new Set(['id']), new Set(graph.bits.names), graph);
  const found = new Set<string>();
  const result = exactSearch(graph, classes, [starts.base], budget, (location, table) => {
    const here = graph.locations[location];
    if (!here.exit) return 'go on';
    let key = '';
    for (let slot = 0; slot < graph.cards; slot++)
      key += String.fromCharCode(table.card(slot).id, 1 + table.bit(slot, 'up') + 2 * table.bit(slot, 'end'));
    found.add(`${layoutKey(here.layout)} ${key}`);
    return 'halt';
  });
  if (result.ended !== undefined) return null;
  const count = BigInt(found.size);
  if (result.complete) return { least: count, most: count, by: 'search', mostBy: 'orders' };
  const least = count > met ? count : met;
  const all = waysToLie(graph);
  const most = performances !== null && performances < all ? performances : all;
  return { least, most, by: 'bounds', mostBy: most === all ? 'orders' : 'performances' };
}

/** All orders of the cards, each lying in any of the ways that some step was seen to bring about. */
export function waysToLie({ cards, edges }: Pick<Graph, 'cards' | 'edges'>): bigint {
  let changed = 0;
  for (const { effect } of edges) for (const op of effect.ops ?? []) changed |= op;
  let all = 1n;
  for (let i = 2; i <= cards; i++) all *= BigInt(i);
  for (const kind of [0, 1]) if (((changed >>> (2 * kind)) & 3) !== 0) all *= 2n ** BigInt(cards);
  return all;
}

/** Orders that so many riffles can leave: those of at most 2^k rising sequences. */
export function ordersAfterRiffles(cards: number, riffles: number): bigint {
  const packets = 2n ** BigInt(riffles);
  return ordersByRisingSequences(cards).reduce(
    (sum, count, i) => (BigInt(i + 1) <= packets ? sum + count : sum),
    0n,
  );
}

/** How many riffles of the whole packet the steps are; null where they are anything else, or may be any number. */
export function riffleCount(steps: readonly Step[]): number | null {
  let count = 0;
  for (const step of steps) {
    if (step.do === 'move' && step.move === 'riffle') {
      const { pile, at } = step.args;
      if (pile !== 'packet' || typeof at !== 'object' || !('of' in at) || at.of !== 'any') return null;
      count++;
      continue;
    }
    if (step.do !== 'repeat' || step.times.of !== 'exactly' || typeof step.times.n !== 'number') return null;
    const inside = riffleCount(step.body);
    if (inside === null) return null;
    count += inside * Math.max(0, step.times.n);
  }
  return count;
}

/** All riffles of the whole packet among other steps, each as often as it is certainly done. */
export function rifflesAmong(steps: readonly Step[]): number {
  return steps.reduce((sum, step) => {
    if (step.do === 'move') return sum + (step.move === 'riffle' ? (riffleCount([step]) ?? 0) : 0);
    if (step.do === 'repeat' && step.times.of === 'exactly' && typeof step.times.n === 'number')
      return sum + Math.max(0, step.times.n) * rifflesAmong(step.body);
    return sum;
  }, 0);
}
