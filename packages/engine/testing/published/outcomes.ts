import type { Key } from '../../src/moves/move.ts';
import type { Step } from '../../src/routine/routine.ts';
import { bitsOf, Bits, cardOf, type Table } from '../naive/table.ts';
import { keysTo, walkAll, type Node } from '../naive/walk.ts';
import { numbered, working } from '../naive/write.ts';

/** A card by its old place (1 = top), with its face and end where it lies now. */
export interface Came {
  readonly from: number;
  readonly up: number;
  readonly end: number;
}

const MOST = 2_000_000;

/** 1 to n. */
export function cards(n: number): number[] {
  return Array.from({ length: n }, (_, i) => i + 1);
}

/** The packet after every performance on n cards, all face down and ends alike at first; each arrangement once. */
export function outcomes(n: number, ...written: readonly (string | Step)[]): Came[][] {
  const found = new Map<string, Came[]>();
  for (const { moment } of exits(n, ...written)) {
    const packet = packetOf(moment.table);
    found.set(JSON.stringify(packet), packet);
  }
  return [...found.values()];
}

export function exits(n: number, ...written: readonly (string | Step)[]): readonly Node[] {
  return exitsFrom(numbered(n), ...written);
}

/** The same from a table written as text. */
export function exitsFrom(table: string, ...written: readonly (string | Step)[]): readonly Node[] {
  const [walk] = walkAll(working(table, ...written), MOST, new Bits());
  if (walk.stuck.length > 0)
    throw new Error(
      `stuck: ${JSON.stringify(walk.stuck[0].trouble)} after ${keysTo(walk.stuck[0].node).join(' ')}`,
    );
  return walk.exits;
}

export function packetOf(table: Table, pile = 'packet'): Came[] {
  const cards = table.piles[table.names.indexOf(pile)] ?? [];
  return cards.map((lies) => ({
    from: cardOf(lies) + 1,
    up: bitsOf(lies) & 1,
    end: (bitsOf(lies) >> 1) & 1,
  }));
}

/** The one order there is, as old places from the top. */
export function onlyOrder(n: number, ...written: readonly (string | Step)[]): number[] {
  const all = outcomes(n, ...written);
  if (all.length !== 1) throw new Error(`${all.length} outcomes of ${JSON.stringify(written)}`);
  return all[0].map(({ from }) => from);
}

/** The order for certain choices, which are the keys taken where there was more than one option. */
export function orderAfter(
  n: number,
  written: readonly (string | Step)[],
  taken: (keys: readonly Key[]) => boolean,
): number[] {
  const found = exits(n, ...written).filter((node) => taken(keysTo(node)));
  if (found.length !== 1) throw new Error(`${found.length} performances with these choices`);
  return packetOf(found[0].moment.table).map(({ from }) => from);
}

/** First one order, then another: old places from the top. */
export function followedBy(first: readonly number[], second: readonly number[]): number[] {
  return second.map((place) => first[place - 1]);
}

/** How often an order must be repeated to give back the packet. */
export function timesToRestore(order: readonly number[]): number {
  let times = 1;
  for (let now = order; now.some((from, i) => from !== i + 1); now = followedBy(now, order)) times++;
  return times;
}

/** The same through the cycles, for orders that take long. */
export function cycleOrder(order: readonly number[]): number {
  const seen = new Set<number>();
  let all = 1;
  for (let start = 1; start <= order.length; start++) {
    if (seen.has(start)) continue;
    let length = 0;
    for (let at = start; !seen.has(at); at = order[at - 1]) {
      seen.add(at);
      length++;
    }
    let [a, b] = [all, length];
    while (b !== 0) [a, b] = [b, a % b];
    all = (all / a) * length;
  }
  return all;
}
