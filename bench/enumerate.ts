import { isTrue, type Bounded, type Ending } from './bounded.ts';
import { cpuMs } from './clock.ts';

export interface Enumerated {
  readonly answer: 'true' | 'false' | 'not finished';
  /** Performances or states that were looked at. */
  readonly looked: number;
  readonly ms: number;
}

// The clock is read once in so many steps.
const STEPS = 4096;

/** Face bits only: neither routine that is timed asks for ends or marks. */
function faceOf(op: number, up: number): number {
  const face = op & 3;
  return face === 0 ? up : face === 1 ? up ^ 1 : face & 1;
}

interface Table {
  readonly kinds: Uint8Array;
  readonly up: Uint8Array;
}

function after(table: Table, from: Uint16Array, ops: Uint32Array | null): Table {
  const kinds = new Uint8Array(from.length);
  const up = new Uint8Array(from.length);
  for (let s = 0; s < from.length; s++) {
    kinds[s] = table.kinds[from[s]];
    up[s] = faceOf(ops === null ? 0 : ops[s], table.up[from[s]]);
  }
  return { kinds, up };
}

function startOf({ kinds, up }: Bounded): Table {
  return { kinds: Uint8Array.from(kinds), up: Uint8Array.from(up) };
}

/** Naive enumeration: every performance by itself, from the start to its end. */
export function everyPerformance(bounded: Bounded, ending: Ending, mostMs: number): Enumerated {
  const { graph, edges, layers } = bounded;
  const started = cpuMs();
  const open = [{ node: layers[0][0], table: startOf(bounded) }];
  let looked = 0;
  let steps = 0;
  for (let here = open.pop(); here !== undefined; here = open.pop()) {
    if (++steps % STEPS === 0 && cpuMs() - started > mostMs)
      return { answer: 'not finished', looked, ms: cpuMs() - started };
    const { node, table } = here;
    if (graph.locations[node.location].exit) {
      looked++;
      if (!isTrue(ending, table.kinds, table.up)) return { answer: 'false', looked, ms: cpuMs() - started };
      continue;
    }
    for (const { edge, to } of edges.get(node.id) ?? [])
      open.push({ node: to, table: after(table, edge.effect.from, edge.effect.ops) });
  }
  return { answer: 'true', looked, ms: cpuMs() - started };
}

/** Exact visited set: every pair of moment and table once, in the set of the language. No bound on repetition is needed. */
export function visitedSet(bounded: Bounded, ending: Ending, mostMs: number): Enumerated {
  const { graph } = bounded;
  const started = cpuMs();
  const seen = new Set<string>();
  const open: { location: number; table: Table }[] = [];
  const meet = (location: number, table: Table): void => {
    let key = String.fromCharCode(location & 0xffff, location >>> 16);
    for (let s = 0; s < table.kinds.length; s++) key += String.fromCharCode(table.kinds[s] * 2 + table.up[s]);
    if (seen.has(key)) return;
    seen.add(key);
    open.push({ location, table });
  };
  meet(graph.start, startOf(bounded));
  let steps = 0;
  for (let here = open.pop(); here !== undefined; here = open.pop()) {
    const late = ++steps % STEPS === 0 && cpuMs() - started > mostMs;
    // The set of the language holds 2^24 entries, and memory ends before that.
    if (late || seen.size > 10_000_000)
      return { answer: 'not finished', looked: seen.size, ms: cpuMs() - started };
    const { location, table } = here;
    if (graph.locations[location].exit) {
      if (!isTrue(ending, table.kinds, table.up))
        return { answer: 'false', looked: seen.size, ms: cpuMs() - started };
      continue;
    }
    for (const { to, effect } of graph.waysFrom(location).edges)
      meet(to, after(table, effect.from, effect.ops));
  }
  return { answer: 'true', looked: seen.size, ms: cpuMs() - started };
}
