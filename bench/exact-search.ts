import { Budget } from '../packages/engine/src/base/budget.ts';
import { readsOf } from '../packages/engine/src/claims/formula.ts';
import { check } from '../packages/engine/src/check.ts';
import { classesOf } from '../packages/engine/src/proving/classes.ts';
import { exactSearch } from '../packages/engine/src/proving/exact.ts';
import { DEFAULT_LIMITS, Meanings } from '../packages/engine/src/proving/question.ts';
import { Graph } from '../packages/engine/src/routine/graph.ts';
import type { Routine } from '../packages/engine/src/routine/routine.ts';
import { startsOf } from '../packages/engine/src/routine/starts.ts';
import { cpuMs } from './clock.ts';

export interface ExactFigures {
  readonly tables: number;
  readonly successors: number;
  readonly successorsPerSecond: number;
  /** Bytes of typed arrays held when the search is over, for each table. */
  readonly bytesPerTable: number;
}

/** The complete search by itself: how many successors it makes in a second and what it keeps for each table. */
export function exactFigures(routine: Routine): ExactFigures {
  const graph = new Graph(routine);
  const starts = startsOf(routine);
  const meanings = new Meanings(routine.endings[0].sentence, {
    graph,
    starts,
    limits: DEFAULT_LIMITS,
    budget: new Budget(DEFAULT_LIMITS.work),
  });
  const attributes = new Set<string>();
  const bits = new Set<string>();
  // Once to learn what the sentence reads and to warm up, then with that known.
  const search = () => {
    let successors = 0;
    const classes = classesOf(starts.universe, attributes, bits, graph);
    const result = exactSearch(graph, classes, starts.all(), new Budget(Infinity), (location) => {
      if (!graph.locations[location].exit) {
        successors += graph.waysFrom(location).edges.length;
        return 'go on';
      }
      const meaning = meanings.at(location);
      if (meaning !== null) {
        const reads = readsOf(meaning.formula);
        reads.attributes.forEach((name) => attributes.add(name));
        reads.bits.forEach((name) => bits.add(name));
      }
      return 'halt';
    });
    return { result, successors };
  };
  // Held until the end, so that nothing is given back while memory is looked at.
  const earlier = [search(), search()];
  collect();
  const before = process.memoryUsage().arrayBuffers;
  const started = cpuMs();
  const { result, successors } = search();
  const spent = cpuMs() - started;
  collect();
  const held = process.memoryUsage().arrayBuffers - before;
  // Asked after the memory was looked at, so that all of it was still held then.
  const cost = [...earlier, { result }].reduce((sum, one) => sum + one.result.wayTo(0).cost, 0);
  if (cost !== 0) throw new Error('the first state of a search is its start, which costs nothing');
  return {
    tables: result.states,
    successors,
    successorsPerSecond: (successors / spent) * 1000,
    bytesPerTable: held / result.states,
  };
}

/** Collecting garbage gives back the memory of arrays only the next time; what came before must not be counted. */
function collect(): void {
  for (let times = 0; times < 4; times++) globalThis.gc?.();
}

/** The longest stretch of processor time, in milliseconds, in which a caller who owns time was not asked whether to go on. */
export function longestSilence(text: string, after: number): number {
  let last = cpuMs();
  let longest = 0;
  const begun = last;
  check(text, {
    ...DEFAULT_LIMITS,
    goOn: () => {
      const now = cpuMs();
      longest = Math.max(longest, now - last);
      last = now;
      return now - begun < after;
    },
  });
  return Math.max(longest, cpuMs() - last);
}
