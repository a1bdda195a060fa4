import { Budget } from '../base/budget.ts';
import { trouble } from '../base/diagnostic.ts';
import { holds, readsOf, type SlotView } from '../claims/formula.ts';
import type { Edge, Graph } from '../routine/graph.ts';
import type { Ending } from '../routine/routine.ts';
import { classesOf, type Classes } from './classes.ts';
import { emptyReason, NOTHING, type Meanings, type Question } from './question.ts';
import type { Failure, Reads, SentenceDecision, Solved } from './decision.ts';
import { exactSearch, type ExactResult } from './exact.ts';
import { kernelFor } from './kernel.ts';
import { looksOf } from './looks.ts';
import { needOf, pathOf } from './need.ts';
import { cheapestPath } from './paths.ts';
import { equationsOf, problemsOf } from './problem.ts';
import { regionFrom } from './region.ts';
import type { StartTable } from '../routine/starts.ts';

/**
 * Cards told apart by everything that the working or the sentence may look at. What the sentence reads can depend on the exit,
 * and exits are found during the search; a first guess is widened until no exit reads more.
 */
function searchWidening(
  question: Question,
  meanings: Meanings,
  search: (classes: Classes, enough: (exit: number) => boolean) => ExactResult,
): ExactResult & { readonly reads: Reads } {
  const { graph, starts } = question;
  const { attributes, bits } = looksOf(graph);
  for (;;) {
    const classes = classesOf(starts.universe, attributes, bits, graph);
    const checked = new Set<number>();
    let more = false;
    const enough = (exit: number): boolean => {
      if (checked.has(exit)) return !more;
      checked.add(exit);
      const meaning = meanings.at(exit);
      if (meaning === null) return true;
      for (const formula of [meaning.formula, meaning.when]) {
        if (formula === undefined) continue;
        const reads = readsOf(formula);
        for (const name of reads.attributes) if (!attributes.has(name)) more = Boolean(attributes.add(name));
        for (const name of reads.bits) if (!bits.has(name)) more = Boolean(bits.add(name));
      }
      return !more;
    };
    const result = search(classes, enough);
    if (!more) return { ...result, reads: { attributes: [...attributes].sort(), bits: [...bits].sort() } };
  }
}

/** Tables and successors between two questions to the caller: some milliseconds. */
const ASKED_EVERY = 8000;

function budgetFor(question: Question): Budget {
  return new Budget(question.limits.states, question.limits.goOn, ASKED_EVERY);
}

/** The complete search over (location, table) pairs. */
export function decideExact(question: Question, ending: Ending, meanings: Meanings): SentenceDecision {
  const { graph, starts } = question;
  let everWhen = false;
  let vacuous = true;
  let exits = 0;
  const result = searchWidening(question, meanings, (classes, enough) => {
    everWhen = false;
    vacuous = true;
    exits = 0;
    return exactSearch(graph, classes, starts.all(), budgetFor(question), (location, table) => {
      if (!graph.locations[location].exit) return 'go on';
      exits++;
      if (!enough(location)) return 'end';
      const meaning = meanings.at(location);
      if (meaning === null) return 'end';
      if (!meaning.vacuous) vacuous = false;
      if (meaning.when !== undefined && !everWhen && !meaning.vacuous) everWhen = holds(meaning.when, table);
      return holds(meaning.formula, table) ? 'halt' : 'end';
    });
  });
  const base = { ...NOTHING, ending, method: 'exact', states: result.states, reads: result.reads } as const;
  if (meanings.trouble !== undefined) return { ...base, verdict: 'undecided', reason: meanings.trouble };
  if (result.ended !== undefined) {
    const failure: Failure = { ...result.ended, shortest: true };
    return { ...base, verdict: 'refuted', failure };
  }
  if (!result.complete)
    return { ...base, verdict: 'undecided', reason: trouble('budget-tables', { tables: result.states }) };
  if (exits === 0) return { ...base, verdict: 'empty', reason: trouble('never-ends') };
  if (vacuous) return { ...base, verdict: 'empty', reason: trouble('about-nothing') };
  if (ending.sentence.says === 'if' && !everWhen)
    return { ...base, verdict: 'empty', reason: trouble('never-when') };
  return { ...base, verdict: 'proved' };
}

interface Arrival {
  readonly location: number;
  readonly state: number;
  readonly cost: number;
  readonly table: StartTable;
}

/** Complete search up to the last look at cards, linear algebra after it. */
export function decideWithLooks(question: Question, ending: Ending, meanings: Meanings): SentenceDecision {
  const { graph, starts, budget } = question;
  // Which attributes the sentence reads is found at the exits, which lie behind the search: ask the skeleton for them first.
  let arrivals: Arrival[] = [];
  const result = searchWidening(question, meanings, (classes, enough) => {
    arrivals = [];
    let widen = false;
    const asked = new Set<number>();
    return exactSearch(graph, classes, starts.all(), budgetFor(question), (location, table, state, cost) => {
      if (graph.locations[location].looksAhead) return 'go on';
      if (!asked.has(location)) {
        asked.add(location);
        for (const exit of regionFrom(graph, [location], budget).exits) if (!enough(exit)) widen = true;
        if (widen || meanings.trouble !== undefined) return 'end';
      }
      arrivals.push({ location, state, cost, table: copyOf(table, graph, classes) });
      return 'halt';
    });
  });
  const base = {
    ...NOTHING,
    ending,
    method: 'exact then linear',
    states: result.states,
    reads: result.reads,
  } as const;
  if (meanings.trouble !== undefined) return { ...base, verdict: 'undecided', reason: meanings.trouble };
  if (!result.complete)
    return { ...base, verdict: 'undecided', reason: trouble('budget-tables', { tables: result.states }) };
  let failure: Failure | undefined =
    result.ended === undefined
      ? undefined
      : { way: result.ended.way, stuck: result.ended.stuck, shortest: true };
  const better = (cost: number): boolean => failure === undefined || cost < failure.way.cost;
  const region = regionFrom(graph, [...new Set(arrivals.map((a) => a.location))], budget);
  const extend = (arrival: Arrival, path: readonly Edge[], cost: number, stuck: Failure['stuck']) => {
    const way = result.wayTo(arrival.state);
    failure = {
      way: { start: way.start, path: [...way.path, ...path], cost: arrival.cost + cost },
      stuck,
      shortest: true,
    };
  };
  if (region.stuck.length > 0) {
    const dead = new Set(region.stuck);
    const found = cheapestPath(graph, arrivals, (location) => dead.has(location), budget);
    if (found !== undefined && better(found.cost)) {
      const arrival = arrivals[found.entry];
      const at = found.path.at(-1)?.to ?? arrival.location;
      extend(arrival, found.path, found.cost - arrival.cost, graph.waysFrom(at).stuck);
    }
  }
  const all = region.exits.flatMap((exit) => {
    const meaning = meanings.at(exit);
    return meaning === null ? [] : [{ exit, ...meaning }];
  });
  if (meanings.trouble !== undefined) return { ...base, verdict: 'undecided', reason: meanings.trouble };
  if (failure?.stuck === undefined) {
    const why = failure === undefined ? emptyReason(all, region.exits.length) : undefined;
    if (why !== undefined) return { ...base, verdict: 'empty', reason: why };
  }
  const exits: { exit: number; equations: NonNullable<ReturnType<typeof equationsOf>> }[] = [];
  for (const { exit, formula } of all) {
    const equations = equationsOf(formula, starts.universe);
    if (equations === null) return decideExact(question, ending, meanings);
    exits.push({ exit, equations });
  }
  if (ending.sentence.says === 'if') return decideExact(question, ending, meanings);
  const solved: Solved[] = [];
  let rows = 0;
  for (const problem of problemsOf(graph, starts.universe, region.ops, exits)) {
    const kernel = kernelFor(problem, graph.cards);
    const need = needOf(problem, kernel, graph, region, budget);
    rows += need.rows.count;
    solved.push({ problem, kernel, need });
    for (const arrival of arrivals)
      for (const member of problem.members) {
        const vector = kernel.ofTable(member, arrival.table);
        // Rows at a location stand cheapest first.
        const row = (need.at[arrival.location] ?? []).find(
          (r) => kernel.value(need.rows.vector(r), vector) !== 0,
        );
        if (row === undefined || !better(arrival.cost + need.rows.cost[row])) continue;
        extend(arrival, pathOf(need, graph, row), need.rows.cost[row], undefined);
      }
  }
  return {
    ...base,
    verdict: failure === undefined ? 'proved' : 'refuted',
    failure,
    solved: failure === undefined ? solved : [],
    rows,
  };
}

/** Representatives of the cards now lying there, with the bits that matter. */
function copyOf(table: SlotView, graph: Graph, classes: Classes): StartTable {
  const cards = Array.from({ length: graph.cards }, (_, slot) => table.card(slot));
  const bits = Uint32Array.from({ length: graph.cards }, (_, slot) =>
    classes.bits.reduce((word, kind) => word | (table.bit(slot, graph.bits.names[kind]) << kind), 0),
  );
  return { cards, bits };
}
