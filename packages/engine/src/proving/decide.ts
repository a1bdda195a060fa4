import { Budget } from '../base/budget.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { Formula } from '../claims/formula.ts';
import { BudgetEnded, Graph } from '../routine/graph.ts';
import type { Ending, Routine } from '../routine/routine.ts';
import { worst, type Decision, type Failure, type SentenceDecision } from './decision.ts';
import { decideChance } from './decide-chance.ts';
import { decideExact, decideWithLooks } from './decide-exact.ts';
import { decideGame, isGame, type Asked } from './decide-game.ts';
import { decideLinear } from './decide-linear.ts';
import { countPerformances, cheapestPath } from './paths.ts';
import { equationsOf } from './problem.ts';
import { regionFrom, type Region } from './region.ts';
import {
  DEFAULT_LIMITS,
  emptyReason,
  Meanings,
  NOTHING,
  undecided,
  type Limits,
  type Question,
} from './question.ts';
import { startsOf } from '../routine/starts.ts';
import { tryOut } from './trials.ts';

/** The verdict on every sentence of the ending, each on its own, and what the working amounts to. */
export function decide(routine: Routine, limits: Limits = DEFAULT_LIMITS): Decision {
  const budget = new Budget(limits.work, limits.goOn);
  const graph = new Graph(routine);
  const starts = startsOf(routine);
  const question: Question = { graph, starts, limits, budget };
  let region: Region | undefined;
  let performances: bigint | null = null;
  const looks = graph.locations[graph.start].looksAhead;
  try {
    if (!looks) {
      region = regionFrom(graph, [graph.start], budget);
      performances = countPerformances(graph, region);
    }
  } catch (error) {
    if (!(error instanceof BudgetEnded)) throw error;
  }
  const troubles: { ending: Ending; trouble: Trouble }[] = [];
  const sentences: SentenceDecision[] = [];
  let stuck: Failure | undefined | null = null;
  const game = isGame(question, region);
  const asked = routine.endings.map((ending) => ({
    ending,
    meanings: new Meanings(ending.sentence, question),
  }));
  // What holds whoever chooses needs no rule; so every sentence is first judged as if all choices were the spectators'.
  const plain = ({ ending, meanings }: Asked): SentenceDecision | undefined => {
    try {
      if (looks) return decideWithLooks(question, ending, meanings);
      if (region === undefined) return undefined;
      if (stuck === null) stuck = cheapestStuck(question, region);
      return decideWithoutLooks(question, region, ending, meanings, stuck);
    } catch (error) {
      if (error instanceof BudgetEnded) return undefined;
      throw error;
    }
  };
  // One rule serves all sentences that must always hold.
  const certain = asked.filter(({ ending }) => ending.chance === undefined);
  const ruled = game ? decideGame(question, certain, plain) : [];
  for (const one of asked) {
    const { ending, meanings } = one;
    let decision =
      ending.chance !== undefined
        ? decideChance(question, one, ending.chance, game, plain)
        : game
          ? ruled[certain.indexOf(one)]
          : plain(one);
    if (meanings.trouble !== undefined) troubles.push({ ending, trouble: meanings.trouble });
    decision ??= undecided(ending, trouble('budget-graph', { work: budget.spent }));
    if (decision.verdict === 'undecided' && !game && ending.chance === undefined)
      decision = tryOut(question, meanings, decision);
    sentences.push(decision);
  }
  return {
    graph,
    starts,
    region,
    sentences,
    verdict: worst(sentences.map((sentence) => sentence.verdict)),
    troubles,
    asides: asked.map(({ meanings }) => meanings.asides()),
    performances,
  };
}

function cheapestStuck(question: Question, region: Region): Failure | undefined {
  if (region.stuck.length === 0) return undefined;
  const { graph, budget, starts } = question;
  const dead = new Set(region.stuck);
  const found = cheapestPath(
    graph,
    [{ location: graph.start, cost: 0 }],
    (location) => dead.has(location),
    budget,
  );
  if (found === undefined) return undefined;
  const at = found.path.at(-1)?.to ?? graph.start;
  return {
    way: { start: starts.base, path: found.path, cost: found.cost },
    stuck: graph.waysFrom(at).stuck,
    shortest: true,
  };
}

function decideWithoutLooks(
  question: Question,
  region: Region,
  ending: Ending,
  meanings: Meanings,
  stuck: Failure | undefined,
): SentenceDecision {
  const base = { ...NOTHING, ending };
  const at = region.exits.map((exit) => ({ exit, meaning: meanings.at(exit) }));
  if (meanings.trouble !== undefined) return { ...base, verdict: 'undecided', reason: meanings.trouble };
  const all = at.flatMap(({ exit, meaning }) => (meaning === null ? [] : [{ exit, ...meaning }]));
  if (stuck === undefined) {
    const why = emptyReason(all, region.exits.length);
    if (why !== undefined) return { ...base, verdict: 'empty', reason: why };
  }
  if (all.length === 0) return { ...base, verdict: 'refuted', failure: stuck };
  const exits: { exit: number; equations: NonNullable<ReturnType<typeof equationsOf>> }[] = [];
  for (const { exit, formula } of all) {
    const equations = equationsOf(formula, question.starts.universe);
    if (equations === null) return decideExact(question, ending, meanings);
    exits.push({ exit, equations });
  }
  const decision = decideLinear(question, region, ending, exits, stuck);
  // A condition that is never met proves nothing: only the complete search can tell.
  if (
    decision.verdict === 'proved' &&
    all.every(({ vacuous, when }) => vacuous || (when !== undefined && !alwaysTrue(when)))
  )
    return decideExact(question, ending, meanings);
  return decision;
}

function alwaysTrue(formula: Formula): boolean {
  return formula.is === 'known' && formula.holds;
}
