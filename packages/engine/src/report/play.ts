import { bad, good, type Result } from '../base/result.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { Key } from '../moves/move.ts';
import type { Edge, Graph } from '../routine/graph.ts';
import type { Chooser } from '../routine/routine.ts';
import type { StartTable, Starts } from '../routine/starts.ts';
import { decidingAt, sayWay, sentenceOf } from './choices.ts';
import { takeEdge, waysOn, type Standing } from './runs.ts';

/** One way on, as a person may choose it. */
export interface WayOn {
  readonly key: Key;
  readonly words: string;
  readonly edge: Edge;
}

/** What can happen next. */
export interface Next {
  /** The step about to be done; undefined at the end and before the set-up is filled in. */
  readonly step: { readonly number: string; readonly sentence: string; readonly who: Chooser } | undefined;
  readonly ways: readonly WayOn[];
  readonly stuck: Trouble | undefined;
  readonly ended: boolean;
}

export function beginning(graph: Graph, start: StartTable): Standing {
  return { location: graph.start, table: start };
}

export function nextAt(graph: Graph, at: Standing, text: string): Next {
  const location = graph.locations[at.location];
  const { step, who } = decidingAt(graph, location);
  const { edges, stuck } = waysOn(graph, at);
  return {
    step: step === undefined ? undefined : { number: step.number, sentence: sentenceOf(step, text), who },
    ways: edges.map((edge) => ({ key: edge.key, words: sayWay(graph, at, edge, text), edge })),
    stuck,
    ended: location.exit,
  };
}

/** A performance as far as it went. */
export interface Played {
  readonly start: StartTable;
  readonly path: readonly Edge[];
  readonly at: Standing;
  readonly stuck: Trouble | undefined;
  /** False when it was given up before its end. */
  readonly ended: boolean;
}

/**
 * Plays with these choices, one for each moment that leaves more than one way on; when they are used up everything goes the plainest
 * way. Keys of the set-up (`swap packet 3`) may come first.
 */
export function playKeys(
  graph: Graph,
  start: StartTable,
  keys: readonly string[],
  most: number,
): Result<Played, Trouble> {
  let next = 0;
  const pick = (edges: readonly Edge[], at: Standing): Edge | Trouble => {
    if (next === keys.length || edges.length === 1) return edges[0];
    const key = keys[next];
    const found = edges.find((edge) => String(edge.key) === key);
    if (found !== undefined) {
      next++;
      return found;
    }
    if (graph.locations[at.location].at < 0) return edges[0];
    const origin = graph.locations[at.location].origin;
    return trouble('no-such-choice', {
      choice: key,
      position: next + 1,
      step: origin?.number ?? '',
      known: edges.map((edge) => String(edge.key)),
    });
  };
  const played = play(graph, start, pick, most);
  if (!played.ok || next === keys.length) return played;
  return bad(trouble('choices-left', { left: keys.slice(next), used: next }));
}

/** Plays at random; what the set-up leaves open is filled in at random as well. */
export function playRandomly(graph: Graph, starts: Starts, random: () => number, most: number): Played {
  const open = fillings(graph, random);
  const start = starts.random(random);
  const pick = (edges: readonly Edge[], at: Standing): Edge => {
    if (graph.locations[at.location].at < 0) {
      const key = open.shift() ?? 'begin';
      return edges.find((edge) => edge.key === key) ?? edges[0];
    }
    return weighted(edges, random);
  };
  const played = play(graph, start, pick, most);
  // Every edge picked is one of those there are.
  if (!played.ok) throw new Error('a random performance chose what is not there');
  return played.value;
}

function play(
  graph: Graph,
  start: StartTable,
  pick: (edges: readonly Edge[], at: Standing) => Edge | Trouble,
  most: number,
): Result<Played, Trouble> {
  const path: Edge[] = [];
  let at = beginning(graph, start);
  for (;;) {
    const ended = graph.locations[at.location].exit;
    const { edges, stuck } = waysOn(graph, at);
    if (ended || stuck !== undefined || edges.length === 0 || path.length === most)
      return good({ start, path, at, stuck, ended });
    const edge = pick(edges, at);
    if ('code' in edge) return bad(edge);
    path.push(edge);
    at = takeEdge(at, edge);
  }
}

function weighted(edges: readonly Edge[], random: () => number): Edge {
  let left = random() * edges.reduce((sum, { weight }) => sum + weight, 0);
  for (const edge of edges) {
    left -= edge.weight;
    if (left < 0) return edge;
  }
  return edges[edges.length - 1];
}

/** Keys that bring every open order and facing about with the same chance: each card in turn goes up by a random number of places. */
function fillings(graph: Graph, random: () => number): string[] {
  const keys: string[] = [];
  for (const freedom of graph.routine.setUp.freedoms) {
    if (freedom.free === 'attribute') continue;
    const { pile, from, count } = freedom;
    for (let i = 0; i < count; i++) {
      if (freedom.free === 'faces') {
        if (random() < 0.5) keys.push(`turn ${pile} ${from + i}`);
        continue;
      }
      const up = Math.floor(random() * (i + 1));
      for (let k = i - 1; k >= i - up; k--) keys.push(`swap ${pile} ${from + k}`);
    }
  }
  return keys;
}
