import { Budget } from '../../base/budget.ts';
import { toNumber, type Rational } from '../../base/rational.ts';
import { START, type Key } from '../../moves/move.ts';
import { chanceOf } from '../../proving/chance.ts';
import type { Decision } from '../../proving/decision.ts';
import { Meanings, type Limits, type Question } from '../../proving/question.ts';
import { BudgetEnded, Graph } from '../../routine/graph.ts';
import type { Ending, MoveStep, Routine, Step } from '../../routine/routine.ts';
import { replaceStep, stepsOf } from '../altering/places.ts';

/** A choice at one step that makes a sentence likelier than it is when everything is chosen at random. */
export interface Raise {
  readonly step: MoveStep;
  /** One choice, or several that are as good. */
  readonly keys: readonly Key[];
  readonly chance: Rational;
}

export interface Raises {
  readonly chance: Rational;
  /** The likeliest first; at most one for each step. */
  readonly raises: readonly Raise[];
}

// Choices of a step that are tried one by one, and tables that are followed for each.
const MOST_CHOICES = 60;
const MOST_TABLES = 5_000;

/**
 * Which choices raise the chance of a sentence that can fail, everything else being chosen at random. Null where its chance cannot be
 * worked out exactly within the limits: a repetition is open, or there are too many tables.
 */
export function raisesOf(
  routine: Routine,
  ending: Ending,
  { graph, starts }: Decision,
  limits: Limits,
): Raises | null {
  const budget = new Budget(limits.work, limits.goOn);
  const chanceIn = (one: Routine): Rational | null => {
    const question: Question = { graph: new Graph(one), starts, limits, budget };
    const { states, seed } = limits;
    const found = chanceOf(question, new Meanings(ending.sentence, question), {
      states: Math.min(states, MOST_TABLES),
      runs: 0,
      seed,
    });
    return found.kind === 'exact' ? found.value : null;
  };
  try {
    const chance = chanceIn(routine);
    if (chance === null) return null;
    const raises = stepsOf(routine).flatMap((step): Raise[] => {
      const best = step.do === 'move' ? bestOf(routine, step, choicesAt(graph, step), chanceIn) : null;
      return best !== null && toNumber(best.chance) > toNumber(chance) ? [best] : [];
    });
    raises.sort((a, b) => toNumber(b.chance) - toNumber(a.chance));
    return { chance, raises };
  } catch (error) {
    if (error instanceof BudgetEnded) return null;
    throw error;
  }
}

function bestOf(
  routine: Routine,
  step: MoveStep,
  keys: readonly Key[],
  chanceIn: (routine: Routine) => Rational | null,
): Raise | null {
  if (keys.length < 2 || keys.length > MOST_CHOICES) return null;
  let best: { readonly keys: Key[]; readonly chance: Rational } | null = null;
  for (const key of keys) {
    const only = { phase: START, keys: [key] };
    const chance = chanceIn(
      replaceStep(routine, step.number, (one): Step[] => [one === step ? { ...step, only } : one]),
    );
    if (chance === null) return null;
    const more = best === null ? 1 : compare(chance, best.chance);
    if (more > 0) best = { keys: [key], chance };
    else if (more === 0) best?.keys.push(key);
  }
  return best === null ? null : { step, ...best };
}

function compare(a: Rational, b: Rational): number {
  const [left, right] = [a.n * b.d, b.n * a.d];
  return left > right ? 1 : left < right ? -1 : 0;
}

/** The options with which a step can begin, as far as the graph is made. */
function choicesAt(graph: Graph, step: MoveStep): Key[] {
  const keys = new Set<Key>();
  for (const { from, key, kind } of graph.edges) {
    const { origin, phase } = graph.locations[from];
    if (kind === 'move' && origin === step && phase === START) keys.add(key);
  }
  return [...keys];
}
