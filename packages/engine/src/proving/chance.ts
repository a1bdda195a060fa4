import { Budget } from '../base/budget.ts';
import { trouble } from '../base/diagnostic.ts';
import { ONE, plus, rational, times, wilson, ZERO, type Rational } from '../base/rational.ts';
import { seeded } from '../base/seeded.ts';
import { holds, readsOf, type SlotView } from '../claims/formula.ts';
import { START } from '../moves/move.ts';
import { firstSlot } from '../pictures/layout.ts';
import { BudgetEnded, type Edge, type Graph, type Location } from '../routine/graph.ts';
import type { TableSlots } from '../routine/starts.ts';
import { afterEdge, seenAt, slotView } from '../routine/table.ts';
import type { Chance } from './chance-found.ts';
import { classesOf, type Classes } from './classes.ts';
import { looksOf } from './looks.ts';
import type { Meanings, Question } from './question.ts';
import { States } from './states.ts';

export interface ChanceLimits {
  /** Tables to follow before giving up on an exact answer. */
  readonly states: number;
  readonly runs: number;
  readonly seed: number;
}

export function chanceOf(question: Question, meanings: Meanings, limits: ChanceLimits): Chance {
  const endless = question.graph.program.instructions.some(
    (i) => i.do === 'repeat' && i.step.times.of !== 'exactly',
  );
  if (endless) return { kind: 'none', why: trouble('chance-endless') };
  const exact = exactChance(question, meanings, limits);
  return exact === null ? estimate(question, meanings, limits) : { kind: 'exact', value: exact };
}

/** Slots whose order is left to chance, `unit` at a time, and bits of slots that are left to chance. */
interface Scatter {
  readonly orders: readonly { readonly at: number; readonly count: number; readonly unit: number }[];
  readonly bits: readonly { readonly slot: number; readonly kind: number }[];
}

/** What a location leaves to chance: an open set-up, or a mix that is as good as random. Undefined for all others. */
function scattered(graph: Graph, location: Location): Scatter | undefined {
  const range = (at: number, count: number, kind: number) =>
    Array.from({ length: count }, (_, k) => ({ slot: at + k, kind }));
  if (location.at < 0) {
    const at = (f: { pile: string; from: number }): number => firstSlot(location.layout, f.pile) + f.from;
    const { freedoms } = graph.routine.setUp;
    return {
      orders: freedoms.flatMap((f) => (f.free === 'order' ? [{ at: at(f), count: f.count, unit: 1 }] : [])),
      bits: freedoms.flatMap((f) => (f.free === 'faces' ? range(at(f), f.count, 0) : [])),
    };
  }
  const instruction = graph.instructionOf(location);
  if (instruction?.do !== 'move' || instruction.move.scatters === undefined || location.phase !== START)
    return undefined;
  const orders: { at: number; count: number; unit: number }[] = [];
  const bits: { slot: number; kind: number }[] = [];
  for (const one of instruction.move.scatters(instruction.args, graph.view(location))) {
    const at = firstSlot(location.layout, one.pile) + one.at;
    orders.push({ at, count: one.count, unit: one.unit ?? 1 });
    if (one.faces === true) bits.push(...range(at, one.count, 0));
    if (one.ends === true) bits.push(...range(at, one.count, 1));
  }
  return { orders, bits };
}

/** Where a scattering mix or the open set-up leads once it is over. */
function overEdge(graph: Graph, location: Location, budget: Budget): Edge | undefined {
  const edges = graph.waysFrom(location.id, undefined, budget).edges;
  if (location.at < 0) return edges.find((edge) => edge.key === 'begin');
  return edges.find((edge) => edge.to !== location.id && graph.locations[edge.to].at !== location.at);
}

function exactChance(question: Question, meanings: Meanings, limits: ChanceLimits): Rational | null {
  const { graph, starts } = question;
  const { attributes, bits } = looksOf(graph);
  for (;;) {
    const walk = new ExactWalk(
      question,
      meanings,
      classesOf(starts.universe, attributes, bits, graph),
      limits.states,
    );
    let value: Rational | null;
    try {
      value = walk.run();
    } catch (error) {
      if (error instanceof BudgetEnded) return null;
      throw error;
    }
    let more = false;
    for (const name of walk.attributes) if (!attributes.has(name)) more = Boolean(attributes.add(name));
    for (const name of walk.bits) if (!bits.has(name)) more = Boolean(bits.add(name));
    if (!more) return value;
  }
}

interface Frame {
  readonly state: number;
  readonly next: readonly { readonly state: number; readonly weight: bigint }[];
  readonly total: bigint;
  at: number;
  sum: Rational;
}

/** The chance of success from each (location, table) pair, each worked out once. */
class ExactWalk {
  readonly attributes = new Set<string>();
  readonly bits = new Set<string>();
  private readonly states: States;
  private readonly value = new Map<number, Rational | 'open'>();
  private readonly budget: Budget;
  private readonly codes: Uint16Array;
  private readonly view: SlotView;
  private readonly question: Question;
  private readonly meanings: Meanings;
  private readonly classes: Classes;

  constructor(question: Question, meanings: Meanings, classes: Classes, limit: number) {
    this.question = question;
    this.meanings = meanings;
    this.classes = classes;
    this.budget = new Budget(limit, question.limits.goOn);
    this.states = new States(question.graph.cards, classes.codes > 256);
    this.codes = new Uint16Array(question.graph.cards);
    this.view = {
      card: (slot) => classes.cardOf(this.codes[slot]),
      bit: (slot, bit) => classes.bitOf(this.codes[slot], question.graph.bits.indexOf(bit)),
    };
  }

  /** Null when the working goes round in a circle, so that ways cannot be counted. */
  run(): Rational | null {
    const { graph, starts } = this.question;
    let sum = ZERO;
    let count = 0n;
    for (const start of starts.all()) {
      const codes = Uint16Array.from(start.cards, (card, slot) =>
        this.classes.codeOf(card, start.bits[slot]),
      );
      const value = this.chanceAt(this.arrive(graph.start, codes));
      if (value === null) return null;
      sum = plus(sum, value);
      count++;
    }
    return times(sum, rational(1n, count));
  }

  private arrive(location: number, codes: ArrayLike<number>): number {
    const before = this.states.count;
    const state = this.states.find(location, codes);
    if (this.states.count > before && !this.budget.spend())
      throw new BudgetEnded('too many tables for an exact chance');
    return state;
  }

  private chanceAt(root: number): Rational | null {
    const stack: Frame[] = [];
    const open = (state: number): Rational | undefined => {
      const leaf = this.leaf(state);
      if (leaf !== undefined) {
        this.value.set(state, leaf);
        return leaf;
      }
      this.value.set(state, 'open');
      const next = this.successors(state);
      const total = next.reduce((sum, { weight }) => sum + weight, 0n);
      stack.push({ state, next, total, at: 0, sum: ZERO });
      return undefined;
    };
    const known = this.value.get(root);
    if (known !== undefined && known !== 'open') return known;
    const first = open(root);
    if (first !== undefined) return first;
    for (;;) {
      const top = stack[stack.length - 1];
      if (top.at === top.next.length) {
        this.value.set(top.state, top.sum);
        stack.pop();
        if (stack.length === 0) return top.sum;
        continue;
      }
      const { state, weight } = top.next[top.at];
      const value = this.value.get(state);
      if (value === 'open') return null;
      const settled = value ?? open(state);
      if (settled === undefined) continue;
      top.sum = plus(top.sum, times(settled, rational(weight, top.total)));
      top.at++;
    }
  }

  private leaf(state: number): Rational | undefined {
    const { graph } = this.question;
    this.states.read(state, this.codes);
    const here = graph.locations[this.states.locationOf(state)];
    if (!here.exit) {
      const stuck = graph.waysFrom(here.id, seenAt(graph, here, this.view), this.budget).stuck !== undefined;
      return stuck ? ZERO : undefined;
    }
    const meaning = this.meanings.at(here.id);
    if (meaning === null) return ZERO;
    const reads = readsOf(meaning.formula);
    reads.attributes.forEach((name) => this.attributes.add(name));
    reads.bits.forEach((name) => this.bits.add(name));
    return holds(meaning.formula, this.view) ? ONE : ZERO;
  }

  private successors(state: number): { state: number; weight: bigint }[] {
    const { graph } = this.question;
    this.states.read(state, this.codes);
    const here = graph.locations[this.states.locationOf(state)];
    const scatter = scattered(graph, here);
    if (scatter !== undefined) {
      const edge = overEdge(graph, here, this.budget);
      if (edge === undefined) throw new BudgetEnded('a mix without an end');
      let tables: number[][] = [[...this.codes]];
      for (const order of scatter.orders) tables = tables.flatMap((table) => this.orders(table, order));
      // Bits that nobody looks at tell no tables apart; each of the others doubles their number.
      for (const { slot, kind } of scatter.bits.filter((bit) => this.classes.bits.includes(bit.kind))) {
        if (!this.budget.spend(tables.length)) throw new BudgetEnded('too many tables for an exact chance');
        tables = tables.flatMap((table) => [
          table,
          table.map((c, s) => (s === slot ? this.toggled(c, kind) : c)),
        ]);
      }
      return tables.map((table) => ({ state: this.arrive(edge.to, table), weight: 1n }));
    }
    const from = Uint16Array.from(this.codes);
    return graph.waysFrom(here.id, seenAt(graph, here, this.view), this.budget).edges.map((edge) => ({
      state: this.arrive(edge.to, this.after(from, edge)),
      weight: BigInt(Math.max(0, Math.round(edge.weight))),
    }));
  }

  private after(codes: Uint16Array, edge: Edge): Uint16Array {
    const { from, ops } = edge.effect;
    return Uint16Array.from(from, (old, slot) => {
      const map = ops === null || ops[slot] === 0 ? null : this.classes.under(ops[slot]);
      return map === null ? codes[old] : map[codes[old]];
    });
  }

  private toggled(code: number, kind: number): number {
    return this.classes.under(1 << (2 * kind))?.[code] ?? code;
  }

  /** Every distinct order of some slots; each stands for equally many orders of the cards. */
  private orders(table: readonly number[], order: { at: number; count: number; unit: number }): number[][] {
    const { at, count, unit } = order;
    const all: number[][] = [];
    const left = new Map<string, { readonly codes: readonly number[]; n: number }>();
    for (let k = at; k < at + count; k += unit) {
      const codes = table.slice(k, k + unit);
      const known = left.get(codes.join());
      if (known === undefined) left.set(codes.join(), { codes, n: 1 });
      else known.n++;
    }
    const made = [...table];
    const place = (k: number): void => {
      if (k >= at + count) {
        if (!this.budget.spend()) throw new BudgetEnded('too many orders for an exact chance');
        all.push([...made]);
        return;
      }
      for (const block of left.values()) {
        if (block.n === 0) continue;
        block.n--;
        block.codes.forEach((code, i) => (made[k + i] = code));
        place(k + unit);
        block.n++;
      }
    };
    place(at);
    return all;
  }
}

// A trial that has not ended by then is left out and said to be.
const MOST_STEPS = 50_000;

function estimate(question: Question, meanings: Meanings, limits: ChanceLimits): Chance {
  const random = seeded(limits.seed);
  const { graph, starts } = question;
  const budget = new Budget(limits.runs * MOST_STEPS, question.limits.goOn);
  let runs = 0;
  let hits = 0;
  try {
    while (runs < limits.runs) {
      let table: TableSlots = starts.random(random);
      let location = graph.locations[graph.start];
      let success: boolean | undefined;
      for (let step = 0; step < MOST_STEPS && success === undefined; step++) {
        if (!budget.spend()) throw new BudgetEnded('budget ended during trials');
        if (location.exit) {
          const meaning = meanings.at(location.id);
          success = meaning !== null && holds(meaning.formula, slotView(table, graph));
          break;
        }
        const scatter = scattered(graph, location);
        if (scatter !== undefined) {
          const edge = overEdge(graph, location, budget);
          if (edge === undefined) break;
          table = shuffled(table, scatter, random);
          location = graph.locations[edge.to];
          continue;
        }
        const ways = graph.waysFrom(location.id, seenAt(graph, location, slotView(table, graph)), budget);
        if (ways.stuck !== undefined) success = false;
        else {
          const edge = pick(ways.edges, random);
          table = afterEdge(table, edge);
          location = graph.locations[edge.to];
        }
      }
      if (success === undefined) return { kind: 'none', why: trouble('chance-endless') };
      runs++;
      if (success) hits++;
    }
  } catch (error) {
    if (!(error instanceof BudgetEnded)) throw error;
  }
  if (runs === 0) return { kind: 'none', why: trouble('budget-trials') };
  return { kind: 'estimate', hits, runs, seed: limits.seed, ...wilson(hits, runs) };
}

function pick(edges: readonly Edge[], random: () => number): Edge {
  let total = 0;
  for (const edge of edges) total += edge.weight;
  let at = random() * total;
  for (const edge of edges) {
    at -= edge.weight;
    if (at < 0) return edge;
  }
  return edges[edges.length - 1];
}

function shuffled(table: TableSlots, scatter: Scatter, random: () => number): TableSlots {
  const cards = [...table.cards];
  const bits = Uint32Array.from(table.bits);
  for (const { at, count, unit } of scatter.orders)
    for (let k = count / unit - 1; k > 0; k--) {
      const other = Math.floor(random() * (k + 1));
      for (let i = 0; i < unit; i++) {
        const [a, b] = [at + k * unit + i, at + other * unit + i];
        [cards[a], cards[b]] = [cards[b], cards[a]];
        [bits[a], bits[b]] = [bits[b], bits[a]];
      }
    }
  for (const { slot, kind } of scatter.bits) if (random() < 0.5) bits[slot] ^= 1 << kind;
  return { cards, bits };
}
