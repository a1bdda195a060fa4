import { seeded } from '../base/seeded.ts';
import type { Key } from '../moves/move.ts';
import { composeOps } from '../pictures/effect.ts';
import { layoutKey, type Layout } from '../pictures/layout.ts';
import { Graph, type Edge } from '../routine/graph.ts';
import type { MoveStep, Routine } from '../routine/routine.ts';

/** What a whole doing of some steps does to the slots; `ops` is null when no bit changes. */
export interface Whole {
  readonly from: Uint16Array;
  readonly ops: Uint32Array | null;
}

/** One way of doing some steps from beginning to end. */
export interface Outcome extends Whole {
  /** What was taken wherever there was more than one option. */
  readonly keys: readonly Key[];
  /** All options taken, forced ones too. */
  readonly path: readonly Edge[];
}

/** Whether steps fit: they cannot get stuck, look at no cards and leave the piles as they were, so far as it is known. */
export type Fit = 'fits' | 'does not fit' | 'too large to tell';

/** Steps with all that can happen in them: a little graph from `start` to `end`. */
export interface LittleGraph {
  readonly start: number;
  readonly end: number;
  readonly edges: readonly Edge[];
}

// More ways than this and the little graph is worked with instead of its ways.
const MOST_OUTCOMES = 130;
// One decision among many is still looked at way by way.
const MOST_WAYS = 4_000;
const MOST_WORK = 8_000;
const LONGEST = 600;
const MOST_TRIES = 8;

/** A routine of these steps on anonymous cards: only sizes matter. */
export function alone(steps: readonly MoveStep[], layout: Layout): Routine {
  let next = 0;
  const piles = layout.names.map((name, i) => ({
    name,
    cards: Array.from({ length: layout.sizes[i] }, () => ({ card: next++, up: 0 as const, end: 0 as const })),
  }));
  return {
    title: '',
    cards: Array.from({ length: next }, (_, id) => ({ id, name: `${id}`, attributes: {} })),
    setUp: { piles, freedoms: [] },
    steps,
    endings: [],
  };
}

/**
 * Some steps by themselves on piles of some sizes. Nothing is explored before it is asked for: most mixes are refuted by one way
 * of doing them.
 */
export class Mix {
  readonly steps: readonly MoveStep[];
  readonly graph: Graph;
  readonly layout: Layout;
  private readonly goal: string;
  private plainWay: Outcome | null | undefined;
  private allWays: readonly Outcome[] | null | undefined;
  private whole: LittleGraph | Exclude<Fit, 'fits'> | undefined;

  constructor(steps: readonly MoveStep[], layout: Layout) {
    this.steps = steps;
    this.graph = new Graph(alone(steps, layout));
    this.layout = layout;
    this.goal = layoutKey(layout);
  }

  /** The piles after the plainest way of doing them; null where it gets stuck or looks at cards. */
  plainEnd(): Layout | null {
    const { graph } = this;
    let at = graph.start;
    for (let i = 0; i < LONGEST; i++) {
      const here = graph.locations[at];
      if (here.exit) return here.layout;
      if (here.looks) return null;
      const [edge] = graph.waysFrom(at).edges;
      if (edge === undefined) return null;
      at = edge.to;
    }
    return null;
  }

  /** The plainest way of doing them; null where it gets stuck or the piles come out otherwise. */
  plain(): Outcome | null {
    if (this.plainWay === undefined) {
      const way = this.follow(this.graph.start, [], () => 0);
      this.plainWay = way === 'unending' ? null : way;
    }
    return this.plainWay;
  }

  /** Every way of doing them, or null where there are too many, some get stuck or leave the piles otherwise. */
  ways(): readonly Outcome[] | null {
    if (this.allWays === undefined) this.allWays = this.listWays();
    return this.allWays;
  }

  /**
   * Ways that begin with one option of the first decision, those that spoil things soonest first: followed plainly, then at random. One
   * that does not fit is null.
   */
  *samples(edge: Edge): Generator<Outcome | null> {
    const before = [...this.decision().prefix, edge];
    const random = seeded(7 + edge.id);
    const any = (n: number): number => Math.min(n - 1, Math.floor(random() * n));
    const isOver = this.graph.locations[edge.to].exit;
    for (let i = 0; i < (isOver ? 1 : MOST_TRIES); i++) {
      const way = this.follow(edge.to, before, i === 0 ? () => 0 : any);
      if (way !== 'unending') yield way;
    }
  }

  /** The forced options before the first that leaves a choice, and the options there. */
  decision(): { readonly prefix: readonly Edge[]; readonly edges: readonly Edge[] } {
    const prefix: Edge[] = [];
    for (let at = this.graph.start; prefix.length < LONGEST;) {
      const { edges } = this.graph.waysFrom(at);
      if (edges.length !== 1) return { prefix, edges };
      prefix.push(edges[0]);
      at = edges[0].to;
    }
    return { prefix, edges: [] };
  }

  /** All that can happen, as far as it begins with one of these options of the first decision; or why it is not told. */
  little(firsts: readonly Edge[]): LittleGraph | Exclude<Fit, 'fits'> {
    const isWhole = firsts.length === this.decision().edges.length;
    if (isWhole && this.whole !== undefined) return this.whole;
    const little = this.explore(firsts);
    if (isWhole) this.whole = little;
    return little;
  }

  private follow(
    from: number,
    before: readonly Edge[],
    choose: (options: number) => number,
  ): Outcome | null | 'unending' {
    const path = [...before];
    let at = from;
    while (!this.graph.locations[at].exit) {
      if (this.graph.locations[at].looks) return null;
      if (path.length > LONGEST) return 'unending';
      const { edges } = this.graph.waysFrom(at);
      if (edges.length === 0) return null;
      const edge = edges[choose(edges.length)];
      path.push(edge);
      at = edge.to;
    }
    return layoutKey(this.graph.locations[at].layout) === this.goal ? this.outcome(path) : null;
  }

  private outcome(path: readonly Edge[]): Outcome {
    const keys: Key[] = [];
    for (const edge of path) if (this.graph.waysFrom(edge.from).edges.length > 1) keys.push(edge.key);
    return { ...composed(path, this.graph.cards), keys, path: [...path] };
  }

  private listWays(): readonly Outcome[] | null {
    const { prefix, edges } = this.decision();
    const isSingle = edges.every((edge) => this.graph.locations[edge.to].exit);
    const most = isSingle ? MOST_WAYS : MOST_OUTCOMES;
    if (edges.length > most) return null;
    const found: Outcome[] = [];
    const path: Edge[] = [...prefix];
    const go = (at: number): boolean => {
      const here = this.graph.locations[at];
      if (here.exit) {
        if (found.length >= most || layoutKey(here.layout) !== this.goal) return false;
        found.push(this.outcome(path));
        return true;
      }
      if (here.looks || path.length > LONGEST) return false;
      const ways = this.graph.waysFrom(at);
      if (ways.stuck !== undefined || found.length + ways.edges.length > most) return false;
      return ways.edges.every((edge) => {
        path.push(edge);
        const isFine = go(edge.to);
        path.pop();
        return isFine;
      });
    };
    return go(prefix.at(-1)?.to ?? this.graph.start) ? found : null;
  }

  private explore(firsts: readonly Edge[]): LittleGraph | Exclude<Fit, 'fits'> {
    const { graph } = this;
    const { prefix } = this.decision();
    const edges = [...prefix, ...firsts];
    const nodes = new Set([graph.start, ...edges.map(({ to }) => to)]);
    const inner = [...new Set(firsts.map(({ to }) => to))];
    let end = -1;
    let work = edges.length;
    for (const id of inner) {
      const here = graph.locations[id];
      if (here.exit) {
        if (layoutKey(here.layout) !== this.goal || (end >= 0 && end !== id)) return 'does not fit';
        end = id;
        continue;
      }
      if (here.looks) return 'does not fit';
      const ways = graph.waysFrom(id);
      if (ways.stuck !== undefined || ways.edges.length === 0) return 'does not fit';
      work += ways.edges.length;
      if (work > MOST_WORK) return 'too large to tell';
      for (const edge of ways.edges) {
        edges.push(edge);
        if (nodes.has(edge.to)) continue;
        nodes.add(edge.to);
        inner.push(edge.to);
      }
    }
    return end < 0 ? 'does not fit' : { start: graph.start, end, edges };
  }
}

/** Several rearrangements one after another as one. */
export function composed(path: readonly { readonly effect: Whole }[], slots: number): Whole {
  let from = new Uint16Array(slots);
  for (let s = 0; s < slots; s++) from[s] = s;
  let ops: Uint32Array | null = null;
  for (const { effect } of path) {
    const after = new Uint16Array(slots);
    for (let s = 0; s < slots; s++) after[s] = from[effect.from[s]];
    if (ops !== null || effect.ops !== null) {
      const changed = new Uint32Array(slots);
      for (let s = 0; s < slots; s++)
        changed[s] = composeOps(
          ops === null ? 0 : ops[effect.from[s]],
          effect.ops === null ? 0 : effect.ops[s],
        );
      ops = changed;
    }
    from = after;
  }
  return { from, ops };
}

export function isIdentity({ from, ops }: Whole): boolean {
  return from.every((old, slot) => old === slot) && (ops === null || ops.every((op) => op === 0));
}

/** The same for two mixes exactly when every card ends in the same place the same way. */
export function wholeKey({ from, ops }: Whole): string {
  let key = String.fromCharCode(...from);
  if (ops !== null && ops.some((op) => op !== 0)) key += `|${ops.join()}`;
  return key;
}
