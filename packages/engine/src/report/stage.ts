import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import { START, type Key } from '../moves/move.ts';
import { RandomWay } from '../proving/random-way.ts';
import { Graph, type Edge } from '../routine/graph.ts';
import type { Chooser, Routine } from '../routine/routine.ts';
import { startsOf, type StartTable, type Starts } from '../routine/starts.ts';
import { decidingAt, sayWay, sentenceOf } from './choices.ts';
import { judge, type Judged } from './judge.ts';
import { slipEdges, slipsAt } from './slips-table.ts';
import type { TableSlip } from './slips-data.ts';
import { dataOf, performanceOf, type Performance } from './performance.ts';
import { takeEdge, waysOn, type Standing } from './runs.ts';
import { storyboardOf, type Scene } from './storyboard.ts';
import type { TableData } from './table-data.ts';

/** A performance as far as it went. */
export interface Played {
  readonly start: StartTable;
  readonly path: readonly Edge[];
  readonly at: Standing;
  /** Why it cannot go on. */
  readonly stuck: Trouble | undefined;
  /** True when it came to its end. */
  readonly ended: boolean;
}

/** One way on, as a person may choose it; the first is the plainest. */
export interface WayOn {
  readonly key: Key;
  readonly words: string;
}

export interface StageNext {
  /** The step about to be done or going on; null before the set-up is filled in and at the end. */
  readonly step: { readonly number: string; readonly sentence: string; readonly who: Chooser } | null;
  readonly ways: readonly WayOn[];
}

/** Steps in the middle of which a performance is given up. */
const MOST_OPTIONS = 100_000;

/** A routine to be performed, by choices, at random or one choice at a time. */
export class Stage {
  private readonly graph: Graph;
  private readonly starts: Starts;
  private readonly text: string;

  /** @param text the note, for the sentences of its steps */
  constructor(routine: Routine, text: string) {
    this.graph = new Graph(routine);
    this.starts = startsOf(routine);
    this.text = text;
  }

  /** The set-up as the note writes it, nothing done yet. */
  begin(): Played {
    return this.arrived(this.starts.base, [], { location: this.graph.start, table: this.starts.base });
  }

  next({ at }: Played): StageNext {
    const { step, who } = decidingAt(this.graph, this.graph.locations[at.location]);
    return {
      step: step === undefined ? null : { number: step.number, sentence: sentenceOf(step, this.text), who },
      ways: waysOn(this.graph, at).edges.map((edge) => ({
        key: edge.key,
        words: sayWay(this.graph, at, edge, this.text),
      })),
    };
  }

  /** Whether the set-up leaves something open. */
  get isOpen(): boolean {
    return this.graph.locations[this.graph.start].at < 0 || this.starts.count > 1n;
  }

  /** The beginning with what the set-up leaves open filled in: as the note writes it, or at random. */
  filled(random?: () => number): Played {
    const start = random === undefined ? this.starts.base : this.starts.random(random);
    const keys = random === undefined ? [] : fillings(this.graph, random);
    let played = this.arrived(start, [], { location: this.graph.start, table: start });
    while (this.graph.locations[played.at.location].at < 0)
      played = this.take(played, keys.shift() ?? 'begin');
    return played;
  }

  /** False in the middle of a mix, where a step is going on. */
  isBetweenSteps({ at }: Played): boolean {
    return this.graph.locations[at.location].phase === START;
  }

  /** One option taken; `key` must be one of those of `next`. */
  take(played: Played, key: Key): Played {
    const edge = waysOn(this.graph, played.at).edges.find((one) => one.key === key);
    // Callers choose among the ways that `next` gave them.
    if (edge === undefined) throw new Error(`no way on called ${key}`);
    return this.arrived(played.start, [...played.path, edge], takeEdge(played.at, edge));
  }

  /**
   * The slips that can be made in doing the step about to be done: its choice is `choice`, or the plainest. None at the end, before the
   * set-up is filled in, and in the middle of a mix.
   */
  slips(played: Played, choice?: Key): TableSlip[] {
    return slipsAt(this.graph, played.at, choice);
  }

  /** The step done with a slip; `slip` and `key` must be among those of `slips` for the same choice. */
  slip(played: Played, slip: string, key: Key, choice?: Key): Played {
    const edges = slipEdges(this.graph, played.at, { slip, key: String(key), choice });
    const at = edges.reduce(takeEdge, played.at);
    return this.arrived(played.start, [...played.path, ...edges], at);
  }

  /**
   * Plays with these choices, one for each moment that leaves more than one way on; when they are used up everything goes the
   * plainest way. Keys of the set-up (`swap packet 3`) may come first.
   */
  byKeys(keys: readonly string[]): Result<Played, Trouble> {
    let next = 0;
    const pick = (edges: readonly Edge[], at: Standing): Edge | Trouble => {
      if (next === keys.length || edges.length === 1) return edges[0];
      const key = keys[next];
      const found = edges.find((edge) => String(edge.key) === key);
      if (found !== undefined) {
        next++;
        return found;
      }
      const location = this.graph.locations[at.location];
      if (location.at < 0) return edges[0];
      return trouble('no-such-choice', {
        choice: key,
        position: next + 1,
        step: location.origin?.number ?? '',
        known: edges.map((edge) => String(edge.key)),
      });
    };
    const played = this.play(this.starts.base, pick);
    if (!played.ok || next === keys.length) return played;
    return bad(trouble('choices-left', { left: keys.slice(next) }));
  }

  /** Plays at random, each move by its own chances; what the set-up leaves open is filled in at random as well. */
  randomly(random: () => number): Played {
    return this.goOn(this.filled(random), random);
  }

  /** Goes on at random to the end, or only until the step that is going on is over. */
  goOn(from: Played, random: () => number, until: 'end' | 'step' = 'end'): Played {
    const path = [...from.path];
    let { at } = from;
    const way = new RandomWay(this.graph, random);
    for (let options = 0; options < MOST_OPTIONS; options++) {
      const { edges } = waysOn(this.graph, at);
      if (this.graph.locations[at.location].exit || edges.length === 0) break;
      const edge = way.pick(at.location, edges);
      path.push(edge);
      at = takeEdge(at, edge);
      if (until === 'step' && this.graph.locations[at.location].phase === START) break;
    }
    return this.arrived(from.start, path, at);
  }

  table({ at }: Played): TableData {
    return dataOf(this.graph, at);
  }

  performance({ start, path }: Played): Performance {
    return performanceOf(this.graph, start, path, this.text);
  }

  storyboard({ start, path }: Played): Scene[] {
    return storyboardOf(this.graph, start, path, this.text);
  }

  /** How every sentence of the ending stands; nothing before the end. */
  judge({ at, ended }: Played): Judged[] {
    return ended ? judge(this.graph, this.starts, at) : [];
  }

  private play(
    start: StartTable,
    pick: (edges: readonly Edge[], at: Standing) => Edge | Trouble,
  ): Result<Played, Trouble> {
    const path: Edge[] = [];
    let at: Standing = { location: this.graph.start, table: start };
    for (;;) {
      const { edges } = waysOn(this.graph, at);
      if (this.graph.locations[at.location].exit || edges.length === 0 || path.length === MOST_OPTIONS)
        return good(this.arrived(start, path, at));
      const edge = pick(edges, at);
      if ('code' in edge) return bad(edge);
      path.push(edge);
      at = takeEdge(at, edge);
    }
  }

  private arrived(start: StartTable, path: readonly Edge[], at: Standing): Played {
    const ended = this.graph.locations[at.location].exit;
    return { start, path, at, stuck: ended ? undefined : waysOn(this.graph, at).stuck, ended };
  }
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
