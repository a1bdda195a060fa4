import { SetDigest } from '../base/digest.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import { readsOf, type Formula, type SlotView } from '../claims/formula.ts';
import type { Graph } from '../routine/graph.ts';
import type { StartTable } from '../routine/starts.ts';
import { applyOps, seenAt } from '../routine/table.ts';
import type { ClosedSet } from '../verdicts/certificate.ts';
import type { Arrival } from './invariant.ts';

/**
 * Makes the whole set of reachable tables anew, breadth first with a plain set of strings, and compares number and digest.
 * `atExit` judges the tables at exits; where `untilLastLook`, the walk ends at locations after the last look and returns them.
 */
export function checkClosedSet(
  graph: Graph,
  universe: readonly Card[],
  starts: Iterable<StartTable>,
  set: ClosedSet,
  untilLastLook: boolean,
  atExit: (exit: number, table: SlotView) => Trouble | undefined,
): { readonly fault: Trouble | undefined; readonly arrivals: readonly Arrival[] } {
  const names = [...set.attributes].sort();
  const bits = set.bits.map((bit) => graph.bits.indexOf(bit)).sort((a, b) => a - b);
  const settings = 1 << bits.length;
  const classes = new Map<string, number>();
  const first: Card[] = [];
  const classOf = new Map<Card, number>();
  for (const card of universe) {
    const key = names
      .map((name) =>
        name === 'id' ? card.id : name === 'name' ? card.name : (card.attributes[name] ?? '\u0000'),
      )
      .map((value) => `${typeof value}${value}`)
      .join('|');
    if (!classes.has(key)) classes.set(key, first.push(card) - 1);
    classOf.set(card, classes.get(key) as number);
  }
  const code = (card: Card, word: number): number =>
    (classOf.get(card) ?? 0) * settings + bits.reduce((s, kind, i) => s | (((word >>> kind) & 1) << i), 0);
  const wordOf = (c: number): number =>
    bits.reduce((w, kind, i) => w | ((((c % settings) >> i) & 1) << kind), 0);

  const seen = new Set<string>();
  const queue: { location: number; codes: number[] }[] = [];
  const arrive = (location: number, codes: number[]): void => {
    const key = `${graph.locations[location].key}|${codes.join()}`;
    if (seen.has(key) || seen.size > set.tables) return;
    seen.add(key);
    queue.push({ location, codes });
  };
  for (const start of starts)
    arrive(
      graph.start,
      start.cards.map((card, slot) => code(card, start.bits[slot])),
    );
  const arrivals: Arrival[] = [];
  const none = (fault: Trouble | undefined) => ({ fault, arrivals });
  for (let next = 0; next < queue.length; next++) {
    const { location, codes } = queue[next];
    const here = graph.locations[location];
    const table = {
      cards: codes.map((c) => first[Math.floor(c / settings)]),
      bits: codes.map(wordOf),
    };
    const view: SlotView = {
      card: (slot) => table.cards[slot],
      bit: (slot, bit) => (table.bits[slot] >>> graph.bits.indexOf(bit)) & 1,
    };
    if (untilLastLook && !here.looksAhead) {
      arrivals.push({ location, table });
      continue;
    }
    if (here.exit) {
      const fault = atExit(location, view);
      if (fault !== undefined) return none(fault);
      continue;
    }
    const ways = graph.waysFrom(location, seenAt(graph, here, view));
    if (ways.stuck !== undefined) return none(trouble('certificate-stuck', { location: here.key }));
    for (const { to, effect } of ways.edges)
      arrive(
        to,
        Array.from(effect.from, (old, slot) => {
          const op = effect.ops === null ? 0 : effect.ops[slot];
          if (op === 0) return codes[old];
          return code(first[Math.floor(codes[old] / settings)], applyOps(wordOf(codes[old]), op));
        }),
      );
  }
  if (seen.size !== set.tables)
    return none(trouble('certificate-set', { tables: seen.size, said: set.tables }));
  const digest = new SetDigest();
  for (const key of seen) digest.add(key);
  if (digest.hex() !== set.digest)
    return none(trouble('certificate-set', { tables: seen.size, said: set.tables }));
  return none(undefined);
}

/** A formula must not look at more than the set tells apart. */
export function looksFurther(formula: Formula, set: ClosedSet): boolean {
  const reads = readsOf(formula);
  return (
    [...reads.attributes].some((name) => !set.attributes.includes(name)) ||
    [...reads.bits].some((name) => !set.bits.includes(name))
  );
}
