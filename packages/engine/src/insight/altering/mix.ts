import { seeded } from '../../base/seeded.ts';
import { isStuck, START, type Key, type Option } from '../../moves/move.ts';
import { Handling } from '../../pictures/effect.ts';
import { layoutKey, type Layout } from '../../pictures/layout.ts';
import { Graph, type Edge, type Location } from '../../routine/graph.ts';
import type { Rearrangements } from '../../routine/rearrangements.ts';
import type { MoveStep, Routine } from '../../routine/routine.ts';
import { after, composed, isIdentity, wholeKey, type Whole } from './whole.ts';

/** One way of doing some steps from beginning to end. */
export interface Outcome extends Whole {
  /** What was taken wherever there was more than one option. */
  readonly keys: readonly Key[];
}

/** Whether steps fit: they cannot get stuck, look at no cards and leave the piles as they were, so far as it is known. */
export type Fit = 'fits' | 'does not fit' | 'too large to tell';

/** Steps with all that can happen in them: a little graph from `start` to `end`. */
export interface LittleGraph {
  readonly start: number;
  readonly end: number;
  readonly edges: readonly Edge[];
}

type Standing = Pick<Location, 'at' | 'phase' | 'layout' | 'numbers'>;

/** A moment in the middle of a mix, with what may be done there and where each of it leads; no options where it gets stuck or looks at cards. */
interface Moment extends Standing {
  readonly options: readonly Option[] | 'over';
  readonly then: (Moment | undefined)[];
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
  return { ...packets(layout), steps };
}

const NOTHING = {};
const packetsKnown = new Map<string, Omit<Routine, 'steps'>>();
const MOST_PACKETS = 200;

function packets(layout: Layout): Omit<Routine, 'steps'> {
  const key = layoutKey(layout);
  const known = packetsKnown.get(key);
  if (known !== undefined) return known;
  let next = 0;
  const piles = layout.names.map((name, i) => ({
    name,
    cards: Array.from({ length: layout.sizes[i] }, () => ({ card: next++, up: 0 as const, end: 0 as const })),
  }));
  const cards = Array.from({ length: next }, (_, id) => ({ id, name: `${id}`, attributes: NOTHING }));
  const made = { title: '', cards, setUp: { piles, freedoms: [] }, endings: [] };
  if (packetsKnown.size >= MOST_PACKETS) packetsKnown.clear();
  packetsKnown.set(key, made);
  return made;
}

/**
 * Some steps by themselves on piles of some sizes. Nothing is explored before it is asked for: most mixes are refuted by one way
 * of doing them.
 */
export class Mix {
  readonly steps: readonly MoveStep[];
  readonly layout: Layout;
  private readonly goal: string;
  private readonly made: Rearrangements | undefined;
  private ownGraph: Graph | undefined;
  /** The moments that samples came by. */
  private readonly moments = new Map<string, Moment>();
  private readonly sampled = new Map<number, { found: (Whole | null)[]; more: Generator<Whole | null> }>();
  private readonly alike = new Map<number, string | null>();
  private plainWay: Whole | null | undefined;
  private allWays: readonly Outcome[] | null | undefined;
  private whole: LittleGraph | Exclude<Fit, 'fits'> | undefined;

  /** Mixes that are made one after the other may share what their moves do. */
  constructor(steps: readonly MoveStep[], layout: Layout, made?: Rearrangements) {
    this.steps = steps;
    this.layout = layout;
    this.goal = layoutKey(layout);
    this.made = made;
  }

  get graph(): Graph {
    return (this.ownGraph ??= new Graph(alone(this.steps, this.layout), this.made));
  }

  /** The plainest way of doing them; null where it gets stuck or the piles come out otherwise. */
  plain(): Whole | null {
    if (this.plainWay === undefined) {
      const way = this.follow(this.graph.start, [], () => 0);
      this.plainWay = way === 'unending' ? null : way;
    }
    return this.plainWay;
  }

  /** Every way of doing them, or null where there are too many, some get stuck or leave the piles otherwise. */
  ways(): readonly Outcome[] | null {
    if (this.allWays === undefined) {
      this.allWays = this.listWays();
      // What is known of a mix with few ways is kept; the graph can be made again.
      if (this.allWays !== null) this.ownGraph = undefined;
    }
    return this.allWays;
  }

  /** What it does in all its ways to cards and to these bits; empty for a mix that does nothing, null where there are too many ways. */
  sameness(bits: number): string | null {
    let key = this.alike.get(bits);
    if (key === undefined) this.alike.set(bits, (key = this.keyOfWays(bits)));
    return key;
  }

  private keyOfWays(bits: number): string | null {
    const ways = this.ways();
    if (ways === null) return null;
    if (ways.every(isIdentity)) return '';
    const keys = new Set(ways.map((way) => wholeKey(way, bits)));
    return [...keys].sort((a, b) => (a < b ? -1 : 1)).join('/');
  }

  /**
   * Ways that begin with one option of the first decision, those that spoil things soonest first: followed plainly, then at random. One
   * that does not fit is null.
   */
  *samples(edge: Edge): Generator<Whole | null> {
    let known = this.sampled.get(edge.id);
    if (known === undefined) this.sampled.set(edge.id, (known = { found: [], more: this.sample(edge) }));
    for (let i = 0; ; i++) {
      if (i === known.found.length) {
        const next = known.more.next();
        if (next.done === true) return;
        known.found.push(next.value);
      }
      yield known.found[i];
    }
  }

  private *sample(edge: Edge): Generator<Whole | null> {
    const before = [...this.decision().prefix, edge];
    const random = seeded(7 + edge.id);
    const any = (n: number): number => Math.min(n - 1, Math.floor(random() * n));
    const isOver = this.graph.locations[edge.to].exit;
    for (let i = 0; i < (isOver ? 1 : MOST_TRIES); i++) {
      const way = this.follow(edge.to, before, i === 0 ? () => 0 : any);
      if (way !== 'unending') yield way;
    }
  }

  /** Forgets what can be worked out again: a mix is asked about once at every place. */
  tidy(): void {
    this.moments.clear();
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

  /** Goes on from a location, step by step; what is not taken is not worked out. */
  private follow(
    from: number,
    before: readonly Edge[],
    choose: (options: number) => number,
  ): Whole | null | 'unending' {
    const { graph } = this;
    const handling = new Handling(graph.locations[from].layout, graph.bits);
    let now = this.moment(graph.locations[from]);
    for (let i = before.length; now.options !== 'over'; i++) {
      if (i > LONGEST) return 'unending';
      if (now.options.length === 0) return null;
      const taken = choose(now.options.length);
      const option = now.options[taken];
      handling.do(option.actions);
      now = now.then[taken] ??= this.moment(this.stands(now, option, handling.layout()));
    }
    if (layoutKey(now.layout) !== this.goal) return null;
    const rest = handling.effect();
    return before.length === 0 ? rest : after(composed(before, graph.cards), rest);
  }

  /** Where the mix stands after an option. */
  private stands(now: Moment, { next, set }: Option, layout: Layout): Standing {
    const instruction = this.graph.program.instructions[now.at];
    const at = next === null && instruction.do === 'move' ? instruction.next : now.at;
    const numbers = set === undefined ? now.numbers : { ...now.numbers, ...set };
    return { at, phase: next ?? START, layout, numbers };
  }

  private moment({ at, phase, layout, numbers }: Standing): Moment {
    const key = `${at}/${phase}/${layoutKey(layout)}${JSON.stringify(numbers)}`;
    let moment = this.moments.get(key);
    if (moment === undefined) {
      const instruction = this.graph.program.instructions[at];
      let options: Moment['options'] = [];
      if (instruction.do === 'exit') options = 'over';
      else if (instruction.do === 'move' && instruction.move.looks === undefined) {
        const found = instruction.move.options(instruction.args, { layout, phase, numbers, seen: undefined });
        if (!isStuck(found)) options = found;
      }
      this.moments.set(key, (moment = { at, phase, layout, numbers, options, then: [] }));
    }
    return moment;
  }

  private outcome(path: readonly Edge[]): Outcome {
    const keys: Key[] = [];
    for (const edge of path) if (this.graph.waysFrom(edge.from).edges.length > 1) keys.push(edge.key);
    const { from, ops } = composed(path, this.graph.cards);
    return { from, ops, keys };
  }

  private listWays(): readonly Outcome[] | null {
    const { prefix, edges } = this.decision();
    const isSingle = edges.every((edge) => this.graph.locations[edge.to].exit);
    const most = isSingle ? MOST_WAYS : MOST_OUTCOMES;
    const from = prefix.at(-1)?.to ?? this.graph.start;
    if (edges.length > most || !this.fitsWithin(from, prefix.length, most)) return null;
    const found: Outcome[] = [];
    const path: Edge[] = [...prefix];
    const go = (at: number): void => {
      if (this.graph.locations[at].exit) found.push(this.outcome(path));
      else
        for (const edge of this.graph.waysFrom(at).edges) {
          path.push(edge);
          go(edge.to);
          path.pop();
        }
    };
    go(from);
    return found;
  }

  /** Whether there are at most so many ways on from a location, and all of them fit. */
  private fitsWithin(from: number, length: number, most: number): boolean {
    const { graph, goal } = this;
    let found = 0;
    const go = (at: number, depth: number): boolean => {
      const here = graph.locations[at];
      if (here.exit) return ++found <= most && layoutKey(here.layout) === goal;
      if (here.looks || depth > LONGEST) return false;
      const ways = graph.waysFrom(at);
      if (ways.stuck !== undefined || found + ways.edges.length > most) return false;
      return ways.edges.every((edge) => go(edge.to, depth + 1));
    };
    return go(from, length);
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
