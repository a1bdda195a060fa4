import { Budget } from '../../base/budget.ts';
import { haveOf, type Entry, type Have } from '../../proving/have.ts';
import { kernelFor, type Kernel } from '../../proving/kernel.ts';
import { needOf, type Need } from '../../proving/need.ts';
import { equationsOf, problemsOf, type Problem } from '../../proving/problem.ts';
import { Meanings, type Limits, type Question } from '../../proving/question.ts';
import { regionFrom, type Region } from '../../proving/region.ts';
import { Graph } from '../../routine/graph.ts';
import type { EitherStep, Ending, Routine } from '../../routine/routine.ts';
import { startsOf, type Starts } from '../../routine/starts.ts';
import { placesOf, putInEverywhere, type Place } from './places.ts';

/** Have and need of one family of equations at every location. */
export interface Family {
  readonly problem: Problem;
  readonly kernel: Kernel;
  readonly need: Need;
  readonly have: Have;
}

/** A routine graph in which every place of the working is a location of its own, so that something can be put in just there. */
export interface Probed {
  readonly routine: Routine;
  readonly graph: Graph;
  readonly region: Region;
  readonly starts: Starts;
  readonly places: readonly Place[];
  /** For each place, the locations that are it: more than one where sizes or numbers differ. */
  readonly at: readonly (readonly number[])[];
}

/** A choice with one way: it does nothing, but it has a location. */
function probe(): EitherStep {
  return { do: 'either', who: 'spectator', branches: [[]], number: '', range: { from: 0, to: 0 } };
}

/** Reaches as far as no cards are looked at. Throws BudgetEnded when the graph is larger than `budget`. */
export function probedGraph(routine: Routine, budget: Budget): Probed {
  const places = placesOf(routine);
  const probes = places.map(probe);
  const graph = new Graph(putInEverywhere(routine, (place) => [probes[place]]));
  const region = regionFrom(graph, [graph.start], budget);
  const placeOf = new Map<unknown, number>(probes.map((step, i) => [step, i]));
  const at: number[][] = places.map(() => []);
  for (const id of region.order) {
    const place = placeOf.get(graph.locations[id].origin);
    if (place !== undefined) at[place].push(id);
  }
  return { routine, graph, region, starts: startsOf(routine), places, at };
}

/**
 * Have and need of a sentence at every location, in columns closed under the routine's operations on bits and under `ops`; null
 * where it is no conjunction of equations. Throws BudgetEnded.
 */
export function familiesOf(
  { graph, region, starts }: Pick<Probed, 'graph' | 'region' | 'starts'>,
  ending: Ending,
  ops: readonly number[],
  limits: Limits,
): Family[] | null {
  const budget = new Budget(limits.work, limits.goOn);
  const question: Question = { graph, starts, limits, budget };
  const meanings = new Meanings(ending.sentence, question);
  const exits = [];
  for (const exit of region.exits) {
    const meaning = meanings.at(exit);
    const equations = meaning === null ? null : equationsOf(meaning.formula, starts.universe);
    if (equations === null) return null;
    exits.push({ exit, equations });
  }
  const closed = [...new Set([...region.ops, ...ops])];
  return problemsOf(graph, starts.universe, closed, exits).map((problem) => {
    const kernel = kernelFor(problem, graph.cards);
    const need = needOf(problem, kernel, graph, region, budget);
    return { problem, kernel, need, have: haveFrom({ graph, starts }, problem, kernel, budget) };
  });
}

/** What is certain at every location in the columns of a problem. */
export function haveFrom(
  { graph, starts }: Pick<Probed, 'graph' | 'starts'>,
  problem: Problem,
  kernel: Kernel,
  budget: Budget,
): Have {
  const entries: Entry[] = starts.spanning.flatMap((table) =>
    problem.members.map((member) => ({
      location: graph.start,
      vector: kernel.ofTable(member, table),
      cost: 0,
    })),
  );
  return haveOf(problem, kernel, graph, entries, budget);
}
