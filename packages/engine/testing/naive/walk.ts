import type { Trouble } from '../../src/base/diagnostic.ts';
import type { Key } from '../../src/moves/move.ts';
import type { Routine } from '../../src/routine/routine.ts';
import { pack } from './cost.ts';
import { Heap } from './heap.ts';
import { listFrame, MomentKeys, settle, type Moment } from './machine.ts';
import { startsOf, type Start } from './starts.ts';
import { tableKey, type Bits } from './table.ts';
import { nextOf, type Next } from './ways-on.ts';

/** More tables than the caller wants to wait for. */
export class TooBig extends Error {}

/** One moment with one table, reached in the cheapest way there is. */
export interface Node {
  readonly moment: Moment;
  /** What can happen here, known when the node is left. */
  is: Next['is'] | 'not yet left';
  cost: number;
  /** How it was reached; null for the start. */
  from: { readonly node: Node; readonly key: Key } | null;
  /** Where each way on leads, in order; filled when the node is left. */
  readonly to: Node[];
}

/** Everything that can happen from one start. */
export interface Walk {
  readonly start: Start;
  readonly root: Node;
  /** In the order in which they were settled: cheapest first. */
  readonly nodes: readonly Node[];
  readonly exits: readonly Node[];
  readonly stuck: readonly { readonly node: Node; readonly trouble: Trouble }[];
}

export type Working = Pick<Routine, 'cards' | 'setUp' | 'steps'>;

/**
 * Walks through every performance from every start by brute force: all tables with all cards told apart, each visited once.
 * Shares with the engine the moves' own options and the meaning of sentences, nothing else. Throws TooBig beyond `most`
 * nodes in all.
 */
export function walkAll(routine: Working, most: number, bits: Bits): Walk[] {
  const walks: Walk[] = [];
  let left = most;
  for (const start of startsOf(routine)) {
    const walk = walkFrom(routine, start, bits, left);
    left -= walk.nodes.length;
    walks.push(walk);
  }
  return walks;
}

export function startMoment(routine: Pick<Working, 'steps'>, start: Start): Moment {
  return { table: start.table, numbers: {}, frames: [listFrame(routine.steps)], phase: 0 };
}

export function walkFrom(routine: Pick<Working, 'steps'>, start: Start, bits: Bits, most: number): Walk {
  const keys = new MomentKeys();
  const known = new Map<string, Node>();
  const queue = new Heap<{ readonly node: Node; readonly cost: number }>();
  const meet = (at: Moment, cost: number, from: Node['from']): Node => {
    const { moment } = settle(at);
    const key = `${keys.place(moment)}\n${tableKey(moment.table)}`;
    let node = known.get(key);
    if (node === undefined) {
      if (known.size >= most) throw new TooBig(`more than ${most} nodes`);
      known.set(key, (node = { moment, is: 'not yet left', cost, from, to: [] }));
    } else if (cost < node.cost) {
      node.cost = cost;
      node.from = from;
    } else return node;
    queue.push(cost, { node, cost });
    return node;
  };
  const root = meet(startMoment(routine, start), 0, null);
  const nodes: Node[] = [];
  const exits: Node[] = [];
  const stuck: { node: Node; trouble: Trouble }[] = [];
  for (let item = queue.pop(); item !== undefined; item = queue.pop()) {
    const { node, cost } = item;
    // Reached more cheaply in the meantime.
    if (cost > node.cost) continue;
    nodes.push(node);
    const next = nextOf(node.moment, start.cards, bits);
    node.is = next.is;
    if (next.is === 'exit') exits.push(node);
    else if (next.is === 'stuck') stuck.push({ node, trouble: next.trouble });
    else
      for (const way of next.ways) {
        const more = pack(way.off, way.begins ? 1 : 0, way.option ? 1 : 0);
        node.to.push(meet(way.to, cost + more, { node, key: way.key }));
      }
  }
  return { start, root, nodes, exits, stuck };
}

/** The keys of everything decided on the way to a node, first to last. */
export function keysTo(node: Node): Key[] {
  const keys: Key[] = [];
  for (let at = node; at.from !== null; at = at.from.node) keys.unshift(at.from.key);
  return keys;
}
