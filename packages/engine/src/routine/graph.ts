import type { Budget } from '../base/budget.ts';
import type { Trouble } from '../base/diagnostic.ts';
import { START, type Key, type Phase, type View } from '../moves/move.ts';
import type { Action } from '../pictures/actions.ts';
import { effectOf, type BitKinds, type Effect } from '../pictures/effect.ts';
import { layoutKey, layoutOf, type Layout } from '../pictures/layout.ts';
import { flatten, type Instruction, type Program } from './program.ts';
import { Rearrangements } from './rearrangements.ts';
import type { MoveStep, Origin, Routine } from './routine.ts';
import { NO_NUMBERS, passSilent, type Numbers } from './silent.ts';

/**
 * A moment of the working: where the performance stands, the sizes of the piles and the numbers fixed so far. Never which card
 * lies where. `at` is -1 while the set-up's freedom is being filled in.
 */
export interface Location {
  readonly id: number;
  /** The same for every run on the same routine; certificates name locations by it. */
  readonly key: string;
  readonly at: number;
  readonly phase: Phase;
  readonly layout: Layout;
  readonly numbers: Numbers;
  readonly exit: boolean;
  /** The step about to be done; undefined at the exit and before the start. */
  readonly origin: Origin | undefined;
  /** True when a move at or after this moment looks at cards. */
  readonly looksAhead: boolean;
  /** True when the move here looks, so that its edges depend on what is seen. */
  readonly looks: boolean;
}

/** How a performance pays: decisions off the plain path, then steps begun, then options taken. Compared as one number. */
export const COST_OFF = 2 ** 32;
export const COST_STEP = 2 ** 16;
export const COST_OPTION = 1;

/** One option at a location: a rearrangement of slots, with what it costs and how it is called. */
export interface Edge {
  /** Its place in `graph.edges`. */
  readonly id: number;
  readonly from: number;
  readonly to: number;
  readonly key: Key;
  /**
   * `set-up` fills in a freedom, `control` is a choice of the block (again, stop, a branch), `move` an option of a move, `slip` what no
   * sentence says.
   */
  readonly kind: 'set-up' | 'control' | 'move' | 'slip';
  readonly cost: number;
  readonly weight: number;
  readonly effect: Effect;
}

/** Something that hands do though no sentence says so: a slip. */
export interface Aside {
  readonly key: Key;
  readonly words: string;
  /** The step that it happens in. */
  readonly step: MoveStep;
  readonly actions: readonly Action[];
  /** True when it is done instead of the step, which is over then; false when it happens beside the step about to be done. */
  readonly passes: boolean;
  readonly set?: Numbers;
}

/** The ways on from a location for one thing seen (or for none). */
export interface Ways {
  readonly edges: readonly Edge[];
  readonly stuck: Trouble | undefined;
}

/** Thrown inside the engine when the budget ends during expansion; callers turn it into an undecided verdict. */
export class BudgetEnded extends Error {}

/**
 * The routine graph. It is made on demand and kept: every set-up, claim and question about the same working uses the same
 * locations and edges. Nothing about the actual cards is in it.
 */
export class Graph {
  readonly routine: Routine;
  readonly program: Program;
  readonly bits: BitKinds;
  readonly locations: Location[] = [];
  /** All edges made so far, whatever location they leave. */
  readonly edges: Edge[] = [];
  readonly start: number;
  /** Number of cards on the table. */
  readonly cards: number;
  private readonly ids = new Map<string, number>();
  private readonly ways: (Map<Key | undefined, Ways> | undefined)[] = [];
  private readonly made: Rearrangements;
  private readonly asides = new Map<number, Aside>();

  constructor(routine: Routine, made: Rearrangements = new Rearrangements()) {
    this.routine = routine;
    this.made = made;
    this.bits = made.bits;
    this.program = flatten(routine);
    const layout = layoutOf(routine.setUp.piles.map((pile) => [pile.name, pile.cards.length] as const));
    this.cards = layout.sizes.reduce((a, b) => a + b, 0);
    this.start = routine.setUp.freedoms.some((f) => f.free !== 'attribute')
      ? this.intern(-1, START, layout, NO_NUMBERS)
      : this.settle(this.program.start, layout, NO_NUMBERS);
  }

  /** Edges out of a location; `seen` matters only where the move looks. */
  waysFrom(id: number, seen?: Key, budget?: Budget): Ways {
    const byKey = (this.ways[id] ??= new Map<Key | undefined, Ways>());
    let found = byKey.get(seen);
    if (found === undefined) byKey.set(seen, (found = this.expand(this.locations[id], seen, budget)));
    return found;
  }

  /** Every location from `from` on, breadth first; stops at looking moves, whose ways depend on the cards. */
  reach(from: readonly number[], budget: Budget): number[] {
    const order = [...new Set(from)];
    const known = new Set(order);
    for (let i = 0; i < order.length; i++) {
      if (this.locations[order[i]].looks) continue;
      for (const edge of this.waysFrom(order[i], undefined, budget).edges)
        if (!known.has(edge.to)) {
          known.add(edge.to);
          order.push(edge.to);
        }
    }
    return order;
  }

  /** An edge besides those that the working has; it leads back into the working, but `waysFrom` never gives it. */
  aside(id: number, aside: Aside): Edge {
    const { at, phase, layout, numbers } = this.locations[id];
    const effect = effectOf(layout, aside.actions, this.bits);
    const set = aside.set === undefined ? numbers : { ...numbers, ...aside.set };
    const instruction = this.program.instructions[at];
    const to =
      aside.passes && instruction?.do === 'move'
        ? this.settle(instruction.next, effect.after, set)
        : this.intern(at, phase, effect.after, set);
    const cost = aside.passes ? COST_STEP : 0;
    const edge = this.edge({ from: id, to, key: aside.key, kind: 'slip', cost, weight: 1, effect });
    this.asides.set(edge.id, aside);
    return edge;
  }

  /** What an edge of kind `slip` does. */
  asideOf(edge: Edge): Aside | undefined {
    return this.asides.get(edge.id);
  }

  instructionOf(location: Location): Instruction | undefined {
    return location.at < 0 ? undefined : this.program.instructions[location.at];
  }

  view(location: Location, seen?: Key): View {
    return { layout: location.layout, phase: location.phase, numbers: location.numbers, seen };
  }

  private intern(at: number, phase: Phase, layout: Layout, numbers: Numbers): number {
    let key = `${at}/${typeof phase === 'number' ? phase : `"${phase}"`}/${layoutKey(layout)}`;
    for (const name of Object.keys(numbers).sort()) key += `${name}=${numbers[name]};`;
    const known = this.ids.get(key);
    if (known !== undefined) return known;
    const instruction = at < 0 ? undefined : this.program.instructions[at];
    const id = this.locations.length;
    this.locations.push({
      id,
      key,
      at,
      phase,
      layout,
      numbers,
      exit: instruction?.do === 'exit',
      origin: instruction !== undefined && 'step' in instruction ? instruction.step : undefined,
      looksAhead:
        instruction === undefined
          ? this.program.instructions[this.program.start].looksAhead
          : instruction.looksAhead,
      looks: instruction?.do === 'move' && instruction.move.looks !== undefined,
    });
    this.ids.set(key, id);
    return id;
  }

  /** Where the working goes on from an instruction: the next that somebody does or chooses, or the exit. */
  private settle(at: number, layout: Layout, numbers: Numbers): number {
    const settled = passSilent(this.program, at, layout, numbers);
    if (settled === null) throw new BudgetEnded('a repetition without moves');
    return this.intern(settled.at, START, layout, settled.numbers);
  }

  private edge(made: Omit<Edge, 'id'>): Edge {
    const edge = { id: this.edges.length, ...made };
    this.edges.push(edge);
    return edge;
  }

  private expand(location: Location, seen: Key | undefined, budget: Budget | undefined): Ways {
    if (budget !== undefined && !budget.spend())
      throw new BudgetEnded('budget ended while the graph was made');
    if (location.at < 0) return this.expandSetUp(location);
    const instruction = this.program.instructions[location.at];
    switch (instruction.do) {
      case 'move':
        return this.expandMove(location, instruction, seen, budget);
      case 'repeat':
        return {
          stuck: undefined,
          edges: [
            this.controlEdge(location, 'stop', instruction.next, 0),
            this.controlEdge(location, 'again', instruction.body, 1),
          ],
        };
      case 'either':
        return {
          stuck: undefined,
          edges: instruction.branches.map((branch, i) =>
            this.controlEdge(location, i + 1, branch, i === 0 ? 0 : 1),
          ),
        };
      default:
        return { stuck: undefined, edges: [] };
    }
  }

  private controlEdge(location: Location, key: Key, at: number, off: 0 | 1): Edge {
    return this.edge({
      from: location.id,
      to: this.settle(at, location.layout, location.numbers),
      key,
      kind: 'control',
      cost: off * COST_OFF,
      weight: 1,
      effect: this.made.identity(location.layout),
    });
  }

  /** Neighbours exchanged in any order, and single cards turned, as often as wanted: every filling of the freedoms. */
  private expandSetUp(location: Location): Ways {
    const { layout } = location;
    const edges: Edge[] = [];
    const edge = (key: Key, to: number, effect: Effect): void => {
      edges.push(this.edge({ from: location.id, to, key, kind: 'set-up', cost: 0, weight: 1, effect }));
    };
    edge('begin', this.settle(this.program.start, layout, location.numbers), this.made.identity(layout));
    for (const freedom of this.routine.setUp.freedoms) {
      if (freedom.free === 'attribute') continue;
      const { pile, from, count } = freedom;
      for (let k = from; k < from + count; k++) {
        if (freedom.free === 'faces')
          edge(
            `turn ${pile} ${k}`,
            location.id,
            effectOf(layout, [{ do: 'mark', pile, at: k, count: 1, bit: 'up', op: 'toggle' }], this.bits),
          );
        else if (k + 1 < from + count)
          edge(
            `swap ${pile} ${k}`,
            location.id,
            effectOf(
              layout,
              [{ do: 'carry', from: pile, at: k, count: 1, to: pile, into: k + 1 }],
              this.bits,
            ),
          );
      }
    }
    return { stuck: undefined, edges };
  }

  private expandMove(
    location: Location,
    instruction: Extract<Instruction, { do: 'move' }>,
    seen: Key | undefined,
    budget: Budget | undefined,
  ): Ways {
    const compiled = this.made.compiled(instruction, this.view(location, seen));
    if (!('stuck' in compiled) && budget !== undefined && !budget.spend(compiled.options.length))
      throw new BudgetEnded('budget ended while a move was compiled');
    if ('stuck' in compiled) return { edges: [], stuck: compiled.stuck };
    const step = location.phase === START ? COST_STEP : 0;
    const edges = compiled.options.map((option): Edge => {
      const numbers = option.set === undefined ? location.numbers : { ...location.numbers, ...option.set };
      const to =
        option.next === null
          ? this.settle(instruction.next, option.effect.after, numbers)
          : this.intern(location.at, option.next, option.effect.after, numbers);
      const cost = option.off * COST_OFF + step + COST_OPTION;
      return this.edge({
        from: location.id,
        to,
        key: option.key,
        kind: 'move',
        cost,
        weight: option.weight,
        effect: option.effect,
      });
    });
    return { edges, stuck: undefined };
  }
}
