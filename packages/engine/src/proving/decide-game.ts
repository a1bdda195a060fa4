import { Budget } from '../base/budget.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import { holds, readsOf, type SlotView } from '../claims/formula.ts';
import { BudgetEnded } from '../routine/graph.ts';
import type { Ending, MoveStep, Step } from '../routine/routine.ts';
import { seenAt } from '../routine/table.ts';
import { moveById } from '../moves/index.ts';
import { Beliefs, type Known } from './beliefs.ts';
import { classesOf } from './classes.ts';
import { looksOf } from './decide-exact.ts';
import type { SentenceDecision } from './decision.ts';
import { solveGame, type GameResult } from './game.ts';
import { NOTHING, undecided, type Meanings, type Question } from './question.ts';
import type { Region } from './region.ts';

/** Whether the performer has a real choice somewhere; a step of the performer that leaves none is no choice. */
export function isGame(question: Question, region: Region | undefined): boolean {
  const steps = performerSteps(question.graph.routine.steps);
  if (steps.length === 0) return false;
  if (region === undefined) return true;
  const numbers = new Set(steps.map((step) => step.number));
  return region.order.some((id) => {
    const { origin } = question.graph.locations[id];
    return origin !== undefined && numbers.has(origin.number) && question.graph.waysFrom(id).edges.length > 1;
  });
}

function performerSteps(steps: readonly Step[]): Step[] {
  return steps.flatMap((step): Step[] => {
    switch (step.do) {
      case 'move':
        return step.who === 'performer' ? [step] : [];
      case 'repeat':
        return [...(step.who === 'performer' ? [step] : []), ...performerSteps(step.body)];
      case 'either':
        return [...(step.who === 'performer' ? [step] : []), ...step.branches.flatMap(performerSteps)];
      case 'each':
        return performerSteps(step.body);
      case 'if':
        return performerSteps([...step.then, ...step.otherwise]);
    }
  });
}

/** Named, pointed to or said openly, and not said to be secret. */
export const knownByNature: Known = (step) =>
  !step.secret && (step.open === true || moveById(step.move).open === true);

/**
 * Sentences of a routine in which the performer chooses: one rule must serve all of them. Where there is none, each is
 * judged alone, and a sentence for which a rule would exist if some secret were known says which.
 */
export function decideGame(
  question: Question,
  endings: readonly { readonly ending: Ending; readonly meanings: Meanings }[],
): SentenceDecision[] {
  const all = play(
    question,
    endings.map((e) => e.meanings),
    knownByNature,
  );
  if (all !== null && 'won' in all && all.won)
    return endings.map(({ ending }) => ({
      ...NOTHING,
      ending,
      verdict: 'proved',
      method: 'rule',
      rule: all.rule,
      states: all.beliefs,
    }));
  const alone = endings.map(({ ending, meanings }): SentenceDecision => {
    const result = play(question, [meanings], knownByNature);
    const base = { ...NOTHING, ending, method: 'rule' } as const;
    if (meanings.trouble !== undefined) return { ...base, verdict: 'undecided', reason: meanings.trouble };
    if (result === null) return undecided(ending, trouble('budget-rule'));
    if (result.won) return { ...base, verdict: 'proved', rule: result.rule, states: result.beliefs };
    const failure = { way: result.way, stuck: result.stuck, shortest: false };
    return {
      ...base,
      verdict: 'refuted',
      failure,
      states: result.beliefs,
      reason: missingSecret(question, meanings),
    };
  });
  // Each has a rule, all together have none: the last cannot be kept beside the others.
  if (all !== null && !all.won && alone.length > 1 && alone.every((one) => one.verdict === 'proved'))
    return alone.map((one, i) =>
      i < alone.length - 1
        ? one
        : {
            ...one,
            verdict: 'refuted',
            failure: { way: all.way, stuck: all.stuck, shortest: false },
            reason: trouble('no-common-rule'),
          },
    );
  return alone;
}

/** Null when the budget ended first. */
function play(question: Question, all: readonly Meanings[], known: Known): GameResult | null {
  const { graph, starts, limits } = question;
  const { attributes, bits } = looksOf(graph);
  try {
    for (;;) {
      const classes = classesOf(starts.universe, attributes, bits, graph);
      const beliefs = new Beliefs(graph, classes, known, new Budget(limits.states, limits.goOn));
      let more = false;
      const holdsAt = (exit: number, table: SlotView): boolean =>
        all.every((meanings) => {
          const meaning = meanings.at(exit);
          if (meaning === null) return false;
          const reads = readsOf(meaning.formula);
          for (const name of reads.attributes)
            if (!attributes.has(name)) more = Boolean(attributes.add(name));
          for (const name of reads.bits) if (!bits.has(name)) more = Boolean(bits.add(name));
          return !more && holds(meaning.formula, table);
        });
      const stuckReason = (state: number): Trouble | undefined => {
        const here = beliefs.load(state);
        return here.exit ? undefined : graph.waysFrom(here.id, seenAt(graph, here, beliefs.view)).stuck;
      };
      const result = solveGame(beliefs, beliefs.begin(starts.all()), holdsAt, stuckReason);
      if (!more) return result;
    }
  } catch (error) {
    if (error instanceof BudgetEnded) return null;
    throw error;
  }
}

/** The secret that every working rule would need, if making one hidden choice known would make a rule possible. */
function missingSecret(question: Question, meanings: Meanings): Trouble | undefined {
  const hidden = moveSteps(question.graph.routine.steps).filter(
    (step) => step.who === 'spectator' && !knownByNature(step),
  );
  for (const secret of hidden) {
    const told: Known = (step) => step.number === secret.number || knownByNature(step);
    const result = play(question, [meanings], told);
    if (result !== null && result.won) return trouble('needs-secret', { step: secret.number });
  }
  return undefined;
}

function moveSteps(steps: readonly Step[]): MoveStep[] {
  return steps.flatMap((step): MoveStep[] => {
    switch (step.do) {
      case 'move':
        return [step];
      case 'repeat':
      case 'each':
        return moveSteps(step.body);
      case 'either':
        return step.branches.flatMap(moveSteps);
      case 'if':
        return moveSteps([...step.then, ...step.otherwise]);
    }
  });
}
