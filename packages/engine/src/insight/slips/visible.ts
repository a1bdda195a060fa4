import { isStuck, START } from '../../moves/move.ts';
import { printPile } from '../../phrases/blanks/pile.ts';
import { printOrdinal } from '../../phrases/tokens.ts';
import { firstSlot, layoutKey, type Layout } from '../../pictures/layout.ts';
import type { Edge, Graph, Location } from '../../routine/graph.ts';
import type { StartTable } from '../../routine/starts.ts';
import { applyOps } from '../../routine/table.ts';
import { cardCount } from '../../moves/handling.ts';
import { dealtByAll } from './dealing.ts';
import type { SlipMoment } from './possible.ts';

/** Whether a performer who watches the piles could notice a slip before the ending. */
export interface Notice {
  readonly verdict: 'always' | 'sometimes' | 'never' | 'unknown';
  /** Where first, and by what. */
  readonly words: string;
}

export const NOT_TOLD: Notice = { verdict: 'unknown', words: '' };

/** For each slot how its card may face: 1 down, 2 up, 3 either. */
type Facing = Uint8Array;

interface Shows {
  /** False where it shows only for some tables that may be there. */
  readonly sure: boolean;
  readonly words: string;
}

/** A card that lies open. */
interface OpenCard {
  readonly slot: number;
  /** When it is seen, and which card it is. */
  readonly words: string;
}

interface Shown {
  /** Sizes of the piles that some right performance has there. */
  readonly layouts: Map<string, Location[]>;
  readonly like: Layout[];
}

/**
 * What lies open between steps, how many cards each pile has and which way its top card faces, and which way cards face that are dealt
 * one by one. A slip shows where the piles have numbers that no right performance has there, or where such a card faces as it never does
 * in one. Which cards can face how is exact: each card goes its own way through the graph.
 */
export class Visible {
  private readonly graph: Graph;
  private readonly facing: ReadonlyMap<number, Facing>;
  /** By instruction: what right performances show whenever they come to it. */
  private readonly shown = new Map<number, Shown>();
  private readonly openCards = new Map<number, readonly OpenCard[]>();

  /** @param order all locations that a right performance can be at */
  constructor(graph: Graph, starts: readonly StartTable[], order: readonly number[]) {
    this.graph = graph;
    const entries = starts.map((start) => ({
      location: graph.start,
      facing: Uint8Array.from(start.bits, (bits) => ((bits & 1) === 1 ? 2 : 1)),
    }));
    this.facing = spread(graph, entries);
    for (const id of order) {
      const location = graph.locations[id];
      if (!isBetween(location)) continue;
      let shown = this.shown.get(location.at);
      if (shown === undefined) this.shown.set(location.at, (shown = { layouts: new Map(), like: [] }));
      const layout = layoutKey(location.layout);
      const known = shown.layouts.get(layout);
      if (known === undefined) {
        shown.layouts.set(layout, [location]);
        shown.like.push(location.layout);
      } else known.push(location);
    }
  }

  /** Whether the slip shows, and where first. */
  noticed(moments: readonly SlipMoment[]): Notice {
    const { graph } = this;
    const entries = moments.flatMap((moment) => this.slipped(moment));
    const facing = spread(graph, entries);
    const hidden: number[] = [...new Set(entries.map(({ location }) => location))];
    let first: Shows | undefined;
    const shows = new Map<number, Shows>();
    for (const [id, faces] of facing) {
      const found = isBetween(graph.locations[id]) ? this.showsAt(graph.locations[id], faces) : undefined;
      if (found === undefined) continue;
      shows.set(id, found);
      if (first === undefined || (found.sure && !first.sure)) first = found;
    }
    const stuck = [...facing.keys()].some(
      (id) => !graph.locations[id].exit && graph.waysFrom(id).stuck !== undefined,
    );
    // Can the end be reached without passing a moment at which it surely shows?
    const passed = new Set(hidden.filter((id) => shows.get(id)?.sure !== true));
    let isHidden = false;
    for (const id of passed) {
      if (graph.locations[id].exit) isHidden = true;
      for (const { to } of graph.waysFrom(id).edges) if (shows.get(to)?.sure !== true) passed.add(to);
    }
    if (!isHidden) return { verdict: 'always', words: first?.words ?? 'the working cannot go on' };
    if (first !== undefined) return { verdict: 'sometimes', words: first.words };
    if (stuck) return { verdict: 'sometimes', words: 'the working may not go on' };
    return { verdict: 'never', words: '' };
  }

  private slipped({ at, by, decisions }: SlipMoment): { location: number; facing: Facing }[] {
    const from = (id: number): { location: number; facing: Facing }[] => {
      const facing = this.facing.get(id);
      return facing === undefined ? [] : [{ location: id, facing }];
    };
    let all = by === undefined ? from(at) : by.flatMap((edge) => through(from(edge.from), [edge]));
    for (const edges of decisions) all = through(all, edges);
    return all;
  }

  private showsAt(location: Location, facing: Facing | undefined): Shows | undefined {
    const { layout, exit, origin } = location;
    const shown = this.shown.get(location.at);
    if (shown === undefined) return undefined;
    const when = exit ? 'at the end' : `before step ${origin?.number ?? ''}`;
    const right = shown.layouts.get(layoutKey(layout));
    if (right === undefined) return { sure: true, words: `${when} ${sizesDiffer(layout, shown.like)}` };
    let maybe: Shows | undefined;
    for (const { slot, words } of this.openAt(location)) {
      const now = facing?.[slot] ?? 3;
      const ever = right.reduce((all, { id }) => all | (this.facing.get(id)?.[slot] ?? 3), 0);
      if (ever === 3 || (now & ~ever) === 0) continue;
      const faces = `${words} ${now === 3 ? 'may face' : 'faces'} ${ever === 1 ? 'up' : 'down'}`;
      if (now !== 3) return { sure: true, words: faces };
      maybe ??= { sure: false, words: faces };
    }
    return maybe;
  }

  /** The cards that everybody sees here: on top of a pile, or dealt one by one in the step that comes. */
  private openAt({ id, layout, exit, origin }: Location): readonly OpenCard[] {
    const known = this.openCards.get(id);
    if (known !== undefined) return known;
    const when = exit ? 'at the end' : `before step ${origin?.number ?? ''}`;
    const open = layout.names.map((pile): OpenCard => ({
      slot: firstSlot(layout, pile),
      words: `${when} the top card of ${printPile(pile)}`,
    }));
    const instruction = this.graph.instructionOf(this.graph.locations[id]);
    if (instruction?.do === 'move') {
      const options = instruction.move.options(instruction.args, this.graph.view(this.graph.locations[id]));
      const dealt = isStuck(options) ? null : dealtByAll(layout, options);
      for (let k = 1; dealt !== null && k < dealt.count; k++)
        open.push({
          slot: firstSlot(layout, dealt.pile) + k,
          words: `as step ${origin?.number ?? ''} deals it, the ${printOrdinal(k + 1)} card of ${printPile(dealt.pile)}`,
        });
    }
    this.openCards.set(id, open);
    return open;
  }
}

function isBetween({ phase, at }: Location): boolean {
  return phase === START && at >= 0;
}

function through(
  all: readonly { readonly location: number; readonly facing: Facing }[],
  edges: readonly Edge[],
): { location: number; facing: Facing }[] {
  const found = new Map<number, Facing>();
  for (const { location, facing } of all)
    for (const edge of edges) {
      if (edge.from !== location) continue;
      const next = after(facing, edge);
      const known = found.get(edge.to);
      if (known === undefined) found.set(edge.to, next);
      else next.forEach((value, slot) => (known[slot] |= value));
    }
  return [...found].map(([location, facing]) => ({ location, facing }));
}

/** How each card may face behind an edge. */
function after(facing: Facing, { effect: { from, ops } }: Edge): Facing {
  return Uint8Array.from(from, (old, slot) => {
    if (ops === null || ops[slot] === 0) return facing[old];
    let result = 0;
    for (const bit of [0, 1])
      if ((facing[old] & (1 << bit)) !== 0) result |= 1 << (applyOps(bit, ops[slot]) & 1);
    return result;
  });
}

/** How each card may face everywhere from here on, as far as no cards are looked at. */
function spread(
  graph: Graph,
  entries: readonly { readonly location: number; readonly facing: Facing }[],
): Map<number, Facing> {
  const at = new Map<number, Facing>();
  const queue: number[] = [];
  const arrive = (location: number, facing: Facing): void => {
    const known = at.get(location);
    if (known === undefined) at.set(location, Uint8Array.from(facing));
    else {
      let isNew = false;
      facing.forEach((value, slot) => {
        if ((known[slot] | value) !== known[slot]) isNew = true;
        known[slot] |= value;
      });
      if (!isNew) return;
    }
    queue.push(location);
  };
  for (const { location, facing } of entries) arrive(location, facing);
  for (let i = 0; i < queue.length; i++) {
    const here = graph.locations[queue[i]];
    if (here.looks || here.exit) continue;
    const facing = at.get(here.id);
    if (facing === undefined) continue;
    for (const edge of graph.waysFrom(here.id).edges) arrive(edge.to, after(facing, edge));
  }
  return at;
}

/** `pile 2 has 3 cards instead of 4`. */
function sizesDiffer(now: Layout, right: readonly Layout[]): string {
  const size = ({ names, sizes }: Layout, name: string): number => sizes[names.indexOf(name)] ?? 0;
  const names = [...new Set([...now.names, ...right.flatMap((layout) => layout.names)])];
  const told = names.find((name) => right.every((layout) => size(layout, name) !== size(now, name)));
  if (told === undefined) return 'the numbers of cards in the piles do not go together';
  const sizes = [...new Set(right.map((layout) => size(layout, told)))].sort((a, b) => a - b);
  const many = size(now, told);
  const has = many === 0 ? 'is not there' : `has ${cardCount(many)}`;
  if (sizes.length > 3) return `${printPile(told)} ${has}, as never happens`;
  const wanted = sizes.map((n) => (n === 0 ? 'none' : String(n))).join(' or ');
  return many > 0 && wanted === 'none'
    ? `there is ${printPile(told)}, with ${cardCount(many)}`
    : `${printPile(told)} ${has} instead of ${wanted}`;
}
