import { holds } from '../../src/claims/formula.ts';
import type { Key } from '../../src/moves/move.ts';
import { Meanings, DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { Budget } from '../../src/base/budget.ts';
import { Graph } from '../../src/routine/graph.ts';
import type { Routine } from '../../src/routine/routine.ts';
import { startsOf } from '../../src/routine/starts.ts';
import { afterEdge, slotView } from '../../src/routine/table.ts';
import type { TableSlots } from '../../src/routine/starts.ts';

/**
 * Whether every sentence is true after every performance, by trying them all with real cards; in the steps `within` only these options
 * are taken, in this order, at each doing. `isStart`: they are only the beginning, and whatever comes after them is open.
 */
export function holdsAlways(
  routine: Routine,
  within: ReadonlySet<unknown> = new Set(),
  keys: readonly Key[] | null = null,
  isStart = false,
): boolean {
  const graph = new Graph(routine);
  const starts = startsOf(routine);
  const question = { graph, starts, limits: DEFAULT_LIMITS, budget: new Budget(Infinity) };
  const meanings = routine.endings.map(({ sentence }) => new Meanings(sentence, question));
  interface State {
    readonly at: number;
    readonly table: TableSlots;
    readonly taken: number;
  }
  const queue: State[] = [...starts.all()].map((table) => ({ at: graph.start, table, taken: 0 }));
  const known = new Set<string>();
  for (const { at, table, taken } of queue) {
    const key = `${at}/${taken}/${table.cards.map(({ attributes }, i) => `${JSON.stringify(attributes)}${table.bits[i]}`).join()}`;
    if (known.has(key)) continue;
    known.add(key);
    const here = graph.locations[at];
    if (here.exit) {
      for (const meaning of meanings) {
        const found = meaning.at(at);
        if (found === null) throw new Error('a sentence without meaning');
        if (!holds(found.formula, slotView(table, graph))) return false;
      }
      continue;
    }
    const ways = graph.waysFrom(at);
    if (ways.stuck !== undefined) return false;
    const isWithin = within.has(here.origin);
    const isChoice = isWithin && keys !== null && ways.edges.length > 1 && (!isStart || taken < keys.length);
    for (const edge of ways.edges) {
      if (isChoice && edge.key !== keys?.[taken]) continue;
      const next = isChoice ? taken + 1 : isWithin ? taken : 0;
      // With other piles fewer decisions may come up: that is another choice.
      const isOver = isWithin && !within.has(graph.locations[edge.to].origin);
      if (isOver && keys !== null && !isStart && next < keys.length) continue;
      queue.push({ at: edge.to, table: afterEdge(table, edge), taken: next });
    }
  }
  return true;
}
