import { Budget } from '../../base/budget.ts';
import { moveById } from '../../moves/index.ts';
import { isStuck, START, stuck, type Move, type Option } from '../../moves/move.ts';
import { layoutKey, type Layout } from '../../pictures/layout.ts';
import { chanceOf } from '../../proving/chance.ts';
import type { Chance } from '../../proving/chance-found.ts';
import { Meanings, type Limits, type Question } from '../../proving/question.ts';
import { Graph, type Edge } from '../../routine/graph.ts';
import type { Ending, MoveStep, Routine, Sentence } from '../../routine/routine.ts';
import type { Starts } from '../../routine/starts.ts';
import { onceInstead } from '../altering/once.ts';
import { wrongly, type PossibleSlip } from './possible.ts';
import type { SlipInstead } from './slip.ts';

// Fractions are followed so far; beyond, performances are tried.
const MOST_TABLES = 20_000;
const RUNS = 400;

/**
 * How likely the endings still come out when one slip happens, at random as to which way and in which round, and everything else is chosen
 * at random. Null where no such chance is to be told: a repetition is open, or the slip does not happen in every performance.
 */
export function slipChance(
  { routine, graph, starts }: { readonly routine: Routine; readonly graph: Graph; readonly starts: Starts },
  { step, slip, moments }: PossibleSlip,
  endings: readonly Ending[],
  limits: Limits,
): Chance | null {
  let isImpossible = false;
  const never = (): void => {
    isImpossible = true;
  };
  const once = onceInstead(routine, step, () =>
    slip.when === 'instead'
      ? [{ ...step, instead: doneWrongly(slip, step, never) }]
      : [step, { ...step, args: {}, instead: spoilt(slip.id, moments, graph, never) }],
  );
  if (once === null || !once.isSure) return null;
  const slipped = new Graph(once.routine);
  const budget = new Budget(limits.work, limits.goOn);
  const question: Question = { graph: slipped, starts, limits, budget };
  const chance = chanceOf(question, new Meanings(all(endings), question), {
    states: Math.min(limits.states, MOST_TABLES),
    runs: RUNS,
    seed: limits.seed,
  });
  return isImpossible || chance.kind === 'none' ? null : chance;
}

function all(endings: readonly Ending[]): Sentence {
  const parts = endings.map(({ sentence }) => sentence);
  return parts.length === 1 ? parts[0] : { says: 'and', parts };
}

/** The step's move with every option done wrongly; an option keeps its weight however many ways it has to go wrong. */
function doneWrongly(slip: SlipInstead, step: MoveStep, never: () => void): Move {
  const own = moveById(step.move);
  const { scatters: _scatters, count: _count, ...move } = own;
  return {
    ...move,
    id: `${own.id}|${slip.id}`,
    options(args, view) {
      const options = own.options(args, view);
      if (isStuck(options) || view.phase !== START) return options;
      const wrong = wrongly(slip, options).map((option) => ({
        option,
        ways: slip.ways({ step, move: own, view, option }),
      }));
      const scale = wrong.reduce((product, { ways }) => leastCommon(product, Math.max(1, ways.length)), 1);
      const made = wrong.flatMap(({ option, ways }) =>
        ways.map(({ key, actions }): Option => ({
          key: `${option.key} ${key}`,
          actions,
          next: null,
          off: 1,
          weight: ((option.weight ?? 1) * scale) / ways.length,
          ...(option.set === undefined ? {} : { set: option.set }),
        })),
      );
      if (made.length > 0) return made;
      never();
      return stuck('no-such-choice');
    },
  };
}

/** A move that is nothing but what happens after a step. */
function spoilt(id: string, moments: PossibleSlip['moments'], graph: Graph, never: () => void): Move {
  const decisions = new Map<string, readonly Edge[]>();
  const keyOf = (number: number, layout: Layout): string => `${number} ${layoutKey(layout)}`;
  let most = 0;
  for (const moment of moments)
    moment.decisions.forEach((edges, number) => {
      most = Math.max(most, number + 1);
      for (const { from } of edges)
        decisions.set(
          keyOf(number, graph.locations[from].layout),
          edges.filter((edge) => edge.from === from),
        );
    });
  return {
    id: `|${id}`,
    procedures: [],
    hands: 'order',
    title: '',
    phrases: [],
    defaults: {},
    help: '',
    caution: '',
    synonyms: [],
    examples: [],
    say: () => '',
    options(_args, view) {
      const number = Number(view.phase);
      const edges = decisions.get(keyOf(number, view.layout)) ?? [];
      if (edges.length === 0) {
        never();
        return stuck('no-such-choice');
      }
      return edges.map((edge, i): Option => ({
        key: `${i} ${edge.key}`,
        actions: graph.asideOf(edge)?.actions ?? [],
        next: number + 1 < most ? number + 1 : null,
        off: i === 0 ? 0 : 1,
      }));
    },
  };
}

function leastCommon(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return (a / x) * b;
}
