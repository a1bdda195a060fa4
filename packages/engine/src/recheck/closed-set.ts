import type { Budget } from '../base/budget.ts';
import { SetDigest } from '../base/digest.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import { readsOf, type Formula, type SlotView } from '../claims/formula.ts';
import type { Graph } from '../routine/graph.ts';
import type { StartTable } from '../routine/starts.ts';
import { seenAt, slotView } from '../routine/table.ts';
import type { ClosedSet } from '../verdicts/certificate.ts';
import { codesFor, type ToldApart } from './codes.ts';
import type { Arrival } from './invariant.ts';
import { spent, TABLE_WORK } from './spent.ts';

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
  budget: Budget,
  atExit: (exit: number, table: SlotView) => Trouble | undefined,
): { readonly fault: Trouble | undefined; readonly arrivals: readonly Arrival[] } {
  const coding = codesFor(graph, universe, set);
  const seen = new Set<string>();
  const queue: { location: number; codes: number[] }[] = [];
  const arrive = (location: number, codes: number[]): void => {
    const key = `${graph.locations[location].key}|${codes.join()}`;
    if (seen.has(key) || seen.size > set.tables) return;
    seen.add(key);
    queue.push({ location, codes });
  };
  for (const start of starts) {
    spent(budget, TABLE_WORK);
    arrive(graph.start, coding.of(start));
  }
  const arrivals: Arrival[] = [];
  const none = (fault: Trouble | undefined) => ({ fault, arrivals });
  for (let next = 0; next < queue.length; next++) {
    spent(budget, TABLE_WORK);
    const { location, codes } = queue[next];
    const here = graph.locations[location];
    const table = coding.table(codes);
    const view = slotView(table, graph);
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
    for (const { to, effect } of ways.edges) arrive(to, coding.after(codes, effect));
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
export function looksFurther(formula: Formula, set: ToldApart): boolean {
  const reads = readsOf(formula);
  return (
    [...reads.attributes].some((name) => !set.attributes.includes(name)) ||
    [...reads.bits].some((name) => !set.bits.includes(name))
  );
}
