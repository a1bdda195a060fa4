import { Budget } from '../base/budget.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import { readsOf, type Formula, type Measure, type Term } from '../claims/formula.ts';
import { firstSlot } from '../pictures/layout.ts';
import { BudgetEnded, Graph } from '../routine/graph.ts';
import type { Ending, Routine } from '../routine/routine.ts';
import { startsOf, type Starts } from '../routine/starts.ts';
import { classesOf, type Classes } from './classes.ts';
import { DEFAULT_LIMITS, Meanings, type Question } from './question.ts';
import { unroll, type Node, type Unrolled } from './smt-unroll.ts';

export interface SmtOptions {
  /** How often a circle of the working may be closed in one performance. */
  readonly rounds: number;
  /** Work that may be spent: locations, edges, and cards written for each way on at each depth. */
  readonly work: number;
  /** Asked now and then; may end it. */
  readonly goOn?: (spent: number) => boolean;
}

/** Rounds that show most failures and still make a text that a solver can take in. */
export const DEFAULT_ROUNDS = 3;
/** Some tens of megabytes of text. */
export const MOST_SMT_WORK = 4_000_000;

/**
 * A sentence of the ending as a question in SMT-LIB 2: satisfiable exactly when some performance makes it false or gets stuck, within
 * the rounds that the text states. Cards alike in all that the sentence reads are one code.
 */
export function smtOf(routine: Routine, ending: Ending, options: SmtOptions): Result<string, Trouble> {
  const graph = new Graph(routine);
  if (graph.locations[graph.start].looksAhead) return bad(trouble('smt-looks'));
  const starts = startsOf(routine);
  const budget = new Budget(options.work, options.goOn);
  const question: Question = { graph, starts, limits: DEFAULT_LIMITS, budget };
  const meanings = new Meanings(ending.sentence, question);
  try {
    const start = afterSetUp(graph);
    const unrolled = unroll(graph, start, options.rounds, budget);
    const exits = new Map<number, Formula>();
    const attributes = new Set<string>();
    const bits = new Set<string>();
    for (const { location } of unrolled.layers.flat()) {
      if (!graph.locations[location].exit || exits.has(location)) continue;
      const meaning = meanings.at(location);
      if (meaning === null) return bad(meanings.trouble ?? trouble('smt-looks'));
      if (isJudged(meaning.formula)) return bad(trouble('smt-judged'));
      exits.set(location, meaning.formula);
      const reads = readsOf(meaning.formula);
      reads.attributes.forEach((name) => attributes.add(name));
      reads.bits.forEach((name) => bits.add(name));
    }
    const classes = classesOf(starts.universe, attributes, bits, graph);
    return good(new Writer(graph, starts, classes, unrolled, exits, options).text(ending.text));
  } catch (error) {
    if (error instanceof BudgetEnded) return bad(trouble('smt-large', { work: options.work }));
    throw error;
  }
}

/** Whether some of it is told by a judgement that no sum of readings gives. */
function isJudged(formula: Formula): boolean {
  switch (formula.is) {
    case 'judged':
      return true;
    case 'and':
    case 'or':
      return formula.parts.some(isJudged);
    case 'not':
      return isJudged(formula.part);
    case 'if':
      return isJudged(formula.when) || isJudged(formula.then);
    case 'exactly when':
      return isJudged(formula.left) || isJudged(formula.right);
    case 'equal':
    case 'order':
    case 'known':
      return false;
  }
}

/** The first location of the working: where the open set-up, if any, ends. */
function afterSetUp(graph: Graph): number {
  if (graph.locations[graph.start].at >= 0) return graph.start;
  const begin = graph.waysFrom(graph.start).edges.find((edge) => edge.key === 'begin');
  return begin?.to ?? graph.start;
}

class Writer {
  private readonly lines: string[] = [];
  private readonly measures = new Map<string, string>();
  private readonly ops = new Map<number, string>();
  private readonly heads: string[] = [];
  private readonly graph: Graph;
  private readonly starts: Starts;
  private readonly classes: Classes;
  private readonly unrolled: Unrolled;
  private readonly exits: ReadonlyMap<number, Formula>;
  private readonly options: SmtOptions;

  constructor(
    graph: Graph,
    starts: Starts,
    classes: Classes,
    unrolled: Unrolled,
    exits: ReadonlyMap<number, Formula>,
    options: SmtOptions,
  ) {
    this.graph = graph;
    this.starts = starts;
    this.classes = classes;
    this.unrolled = unrolled;
    this.exits = exits;
    this.options = options;
  }

  text(sentence: string): string {
    const { layers, bounded } = this.unrolled;
    layers.forEach((_, t) => {
      this.lines.push(`(declare-const at${t} Int)`);
      for (let s = 0; s < this.graph.cards; s++) this.lines.push(`(declare-const ${this.slot(t, s)} Int)`);
    });
    this.writeStart();
    for (let t = 0; t + 1 < layers.length; t++) this.writeLayer(t);
    this.writeFailure();
    const bound = bounded
      ? `; Bounded: repetitions are followed for at most ${this.options.rounds} rounds in one performance; unsat says nothing beyond.`
      : '; Complete: the working has no repetition beyond what is written out here.';
    return [
      `; Satisfiable exactly when some performance makes this false, or gets stuck: ${sentence.replace(/\s+/g, ' ')}`,
      bound,
      '; at<t> is the moment after t choices, c<t>_<s> the kind of card (with its bits) in slot s then.',
      '(set-logic ALL)',
      ...this.heads,
      ...this.lines,
      '(check-sat)',
      '',
    ].join('\n');
  }

  private slot(t: number, s: number): string {
    return `c${t}_${s}`;
  }

  /** The cards at the start: each slot's code, open attributes, faces and orders included. */
  private writeStart(): void {
    const { freedoms, piles } = this.graph.routine.setUp;
    const { layout } = this.graph.locations[this.graph.start];
    const orders = freedoms.flatMap((f) =>
      f.free === 'order' ? [{ at: firstSlot(layout, f.pile) + f.from, count: f.count }] : [],
    );
    const faces = new Set(
      freedoms.flatMap((f) =>
        f.free === 'faces'
          ? Array.from({ length: f.count }, (_, k) => firstSlot(layout, f.pile) + f.from + k)
          : [],
      ),
    );
    this.lines.push(`(assert (= at0 0))`);
    const codes = (s: number): number[] => [
      ...new Set(this.starts.spanning.map((table) => this.classes.codeOf(table.cards[s], table.bits[s]))),
    ];
    for (let s = 0; s < this.graph.cards; s++) {
      this.lines.push(`(declare-const d${s} Int)`);
      const order = orders.find(({ at, count }) => s >= at && s < at + count);
      const range = order === undefined ? [s] : Array.from({ length: order.count }, (_, k) => order.at + k);
      const possible = [...new Set(range.flatMap(codes))];
      this.lines.push(`(assert (or false ${possible.map((c) => `(= d${s} ${c})`).join(' ')}))`);
      const turned = faces.has(s) ? ` (= c0_${s} (${this.op(1)} d${s}))` : '';
      this.lines.push(`(assert (or (= c0_${s} d${s})${turned}))`);
    }
    // An open order: every kind of card as often as there are such cards. Cards with open attributes count with their kinds open.
    for (const { at, count } of orders) {
      const slots = Array.from({ length: count }, (_, k) => at + k);
      slots.forEach((s) => this.lines.push(`(declare-const e${s} Int)`));
      slots.forEach((s) =>
        this.lines.push(
          `(assert (or ${codes(s)
            .map((c) => `(= e${s} ${c})`)
            .join(' ')}))`,
        ),
      );
      for (const code of new Set(slots.flatMap(codes))) {
        const many = (name: string): string =>
          `(+ 0 ${slots.map((s) => `(ite (= ${name}${s} ${code}) 1 0)`).join(' ')})`;
        this.lines.push(`(assert (= ${many('d')} ${many('e')}))`);
      }
    }
    if (piles.length === 0) this.lines.push('; no piles');
  }

  private writeLayer(t: number): void {
    const { layers, edges } = this.unrolled;
    for (const node of layers[t]) {
      const ways = edges.get(node.id) ?? [];
      const stay = Array.from(
        { length: this.graph.cards },
        (_, s) => `(= ${this.slot(t + 1, s)} ${this.slot(t, s)})`,
      );
      const options = ways.map(({ edge, to }) => {
        const { from, ops } = edge.effect;
        const cards = Array.from(from, (old, s) => {
          const op = ops === null ? 0 : ops[s];
          const before = this.slot(t, old);
          const changed = op === 0 || this.classes.under(op) === null ? before : `(${this.op(op)} ${before})`;
          return `(= ${this.slot(t + 1, s)} ${changed})`;
        });
        return `(and (= at${t + 1} ${to.id}) ${cards.join(' ')})`;
      });
      // Where a performance is over or stuck it stays; where it was cut short, no way is left.
      if (this.over(node)) options.push(`(and (= at${t + 1} ${node.id}) ${stay.join(' ')})`);
      this.lines.push(`(assert (=> (= at${t} ${node.id}) (or false ${options.join(' ')})))`);
    }
    const inside = new Set([...this.overSoFar(t + 1), ...layers[t + 1]].map((node) => node.id));
    this.lines.push(`(assert (or ${[...inside].map((id) => `(= at${t + 1} ${id})`).join(' ')}))`);
    for (const node of this.overSoFar(t)) {
      if (layers[t].includes(node)) continue;
      const stay = Array.from(
        { length: this.graph.cards },
        (_, s) => `(= ${this.slot(t + 1, s)} ${this.slot(t, s)})`,
      );
      this.lines.push(
        `(assert (=> (= at${t} ${node.id}) (and (= at${t + 1} ${node.id}) ${stay.join(' ')})))`,
      );
    }
  }

  private over(node: Node): boolean {
    return this.graph.locations[node.location].exit || this.stuck(node);
  }

  private stuck(node: Node): boolean {
    return this.graph.waysFrom(node.location).stuck !== undefined;
  }

  /** Nodes at which a performance may have ended by depth t. */
  private overSoFar(t: number): Node[] {
    const all = new Map<number, Node>();
    for (const layer of this.unrolled.layers.slice(0, t + 1))
      for (const node of layer) if (this.over(node)) all.set(node.id, node);
    return [...all.values()];
  }

  private writeFailure(): void {
    const last = this.unrolled.layers.length - 1;
    const cases: string[] = [];
    for (const node of this.overSoFar(last)) {
      const formula = this.exits.get(node.location);
      const broken = formula === undefined ? 'true' : `(not ${this.formula(formula, last)})`;
      cases.push(`(and (= at${last} ${node.id}) ${broken})`);
    }
    this.lines.push(`(assert (or false ${cases.join('\n  ')}))`);
  }

  private formula(formula: Formula, t: number): string {
    switch (formula.is) {
      case 'known':
        return formula.holds ? 'true' : 'false';
      case 'equal': {
        const sum = `(- ${this.sum(formula.terms, t)} ${literal(formula.total)})`;
        return formula.mod === undefined ? `(= ${sum} 0)` : `(= (mod ${sum} ${formula.mod}) 0)`;
      }
      case 'order': {
        const sum = this.sum(formula.terms, t);
        const least = formula.least === undefined ? '' : ` (>= ${sum} ${literal(formula.least)})`;
        const most = formula.most === undefined ? '' : ` (<= ${sum} ${literal(formula.most)})`;
        return `(and true${least}${most})`;
      }
      case 'and':
      case 'or': {
        const none = formula.is === 'and' ? 'true' : 'false';
        return `(${formula.is} ${none} ${formula.parts.map((part) => this.formula(part, t)).join(' ')})`;
      }
      case 'judged':
        // Refused before anything was written.
        throw new Error('a judgement has no words in arithmetic');
      case 'not':
        return `(not ${this.formula(formula.part, t)})`;
      case 'if':
        return `(=> ${this.formula(formula.when, t)} ${this.formula(formula.then, t)})`;
      case 'exactly when':
        return `(= ${this.formula(formula.left, t)} ${this.formula(formula.right, t)})`;
    }
  }

  private sum(terms: readonly Term[], t: number): string {
    const parts = terms.map(
      ({ slot, coef, measure }) => `(* ${literal(coef)} (${this.measure(measure)} ${this.slot(t, slot)}))`,
    );
    return `(+ 0 0 ${parts.join(' ')})`;
  }

  private measure(measure: Measure): string {
    const known = this.measures.get(measure.id);
    if (known !== undefined) return known;
    const name = `m${this.measures.size}`;
    this.measures.set(measure.id, name);
    const values = Array.from({ length: this.classes.codes }, (_, code) =>
      measure.of(this.classes.cardOf(code), (bit) => this.classes.bitOf(code, this.graph.bits.indexOf(bit))),
    );
    this.heads.push(`; ${measure.id.replace(/\s+/g, ' ')}`, defined(name, values));
    return name;
  }

  private op(op: number): string {
    const known = this.ops.get(op);
    if (known !== undefined) return known;
    const name = `h${this.ops.size}`;
    this.ops.set(op, name);
    const map = this.classes.under(op);
    this.heads.push(
      defined(name, map === null ? Array.from({ length: this.classes.codes }, (_, c) => c) : [...map]),
    );
    return name;
  }
}

function literal(n: number): string {
  return n < 0 ? `(- ${-n})` : String(n);
}

/** A function on codes as a chain of cases. */
function defined(name: string, values: readonly number[]): string {
  const last = values.length - 1;
  const chain = values
    .slice(0, -1)
    .reduceRight(
      (rest, value, code) => `(ite (= x ${code}) ${literal(value)} ${rest})`,
      literal(values[last] ?? 0),
    );
  return `(define-fun ${name} ((x Int)) Int ${chain})`;
}
