import { Budget } from '../base/budget.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import { holds, readsOf } from '../claims/formula.ts';
import { BudgetEnded } from '../routine/graph.ts';
import type { Ending, Step } from '../routine/routine.ts';
import { innerSteps, knownByNature, moveSteps, type Known } from '../routine/sight.ts';
import { seenAt } from '../routine/table.ts';
import { Beliefs } from './beliefs.ts';
import { classesOf } from './classes.ts';
import { looksOf } from './looks.ts';
import type { Reads, SentenceDecision } from './decision.ts';
import { solveGame, type Loss } from './game.ts';
import { NOTHING, undecided, type Meanings, type Question } from './question.ts';
import type { Way } from './exact.ts';
import type { Region } from './region.ts';
import { reachedBy, written, type WrittenRule } from './rule.ts';

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
  return steps.flatMap((step): Step[] => [
    ...('who' in step && step.who === 'performer' ? [step] : []),
    ...(step.do === 'move' ? [] : performerSteps(innerSteps(step))),
  ]);
}

export interface Asked {
  readonly ending: Ending;
  readonly meanings: Meanings;
}

/**
 * Sentences of a routine in which the performer chooses: one rule must serve all of them. `plain` judges a sentence as if all
 * choices were the spectators': what then holds needs no rule. Of the others as many as possible are kept together, first come,
 * first served; a sentence for which a rule would exist if some secret were known says which.
 */
export function decideGame(
  question: Question,
  asked: readonly Asked[],
  plain: (asked: Asked) => SentenceDecision | undefined,
): SentenceDecision[] {
  const decisions = asked.map((one) => {
    const decision = plain(one);
    return decision?.verdict === 'proved' ||
      decision?.verdict === 'empty' ||
      one.meanings.trouble !== undefined
      ? decision
      : undefined;
  });
  const open = asked.filter((_, i) => decisions[i] === undefined);
  const together = play(question, open);
  const ruled =
    together !== null && together.won ? { played: together, kept: open } : keptTogether(question, open);
  return asked.map((one, i): SentenceDecision => {
    const { ending, meanings } = one;
    const decided = decisions[i];
    if (decided !== undefined) return decided;
    if (meanings.trouble !== undefined) return undecided(ending, meanings.trouble);
    if (ruled.kept.includes(one) && ruled.played !== null) return proved(question, one, ruled.played);
    return alone(question, one, ruled.kept);
  });
}

/** One sentence after another is added as long as there is still a rule for all. */
function keptTogether(question: Question, open: readonly Asked[]): { played: Won | null; kept: Asked[] } {
  let kept: Asked[] = [];
  let played: Won | null = null;
  if (open.length < 2) return { played, kept };
  for (const one of open) {
    const more = play(question, [...kept, one]);
    if (more === null || !more.won) continue;
    kept = [...kept, one];
    played = more;
  }
  return { played, kept };
}

function proved(question: Question, { ending, meanings }: Asked, played: Won): SentenceDecision {
  const base = { ...NOTHING, ending, method: 'rule', states: played.beliefs, reads: played.reads } as const;
  const why = emptiness(meanings, ending, played);
  if (why !== undefined) return { ...base, verdict: 'empty', reason: why };
  return { ...base, verdict: 'proved', rule: played.rule };
}

/** A sentence that is not among those that hold together. */
function alone(question: Question, asked: Asked, kept: readonly Asked[]): SentenceDecision {
  const { ending, meanings } = asked;
  const played = play(question, [asked]);
  if (played === null) return undecided(ending, trouble('budget-rule'));
  if (meanings.trouble !== undefined) return undecided(ending, meanings.trouble);
  const refuted = { ...NOTHING, ending, method: 'rule', verdict: 'refuted', states: played.beliefs } as const;
  if (!played.won) {
    const { loss } = played;
    const stuck = loss.is === 'failure' ? played.stuck : lossTrouble(loss);
    const failure = { way: loss.way, stuck, shortest: false };
    return { ...refuted, failure, reason: missingSecret(question, asked) };
  }
  if (kept.length === 0) return proved(question, asked, played);
  // The rule that serves the others does not serve this one, which a performance under their rule shows.
  const theirs = play(question, kept, { also: asked });
  const way = theirs !== null && theirs.won ? theirs.failing : undefined;
  if (way === undefined) return undecided(ending, trouble('budget-rule'));
  const failure = { way, stuck: undefined, shortest: false };
  return { ...refuted, failure, reason: trouble('no-common-rule') };
}

function lossTrouble(loss: Exclude<Loss, { is: 'failure' }>): Trouble {
  return loss.is === 'endless' ? trouble('rule-never-ends') : trouble('no-choice-fits', { step: loss.step });
}

interface Won {
  readonly won: true;
  readonly rule: WrittenRule;
  readonly beliefs: number;
  readonly reads: Reads;
  /** Exits that are reached under the rule, each with its tables. */
  readonly ends: Ends;
  /** A performance under the rule after which another sentence is false, where one was asked about. */
  readonly failing: Way | undefined;
}

interface Lost {
  readonly won: false;
  readonly loss: Loss;
  readonly stuck: Trouble | undefined;
  readonly beliefs: number;
}

interface Ends {
  readonly exits: ReadonlySet<number>;
  /** Whether the condition of a sentence "if ..., then ..." is ever met. */
  readonly met: (meanings: Meanings) => boolean;
}

interface How {
  readonly known?: Known;
  /** A sentence that need not hold, but is judged as well. */
  readonly also?: Asked;
}

/** Whether one rule makes all these sentences true; null when the budget ended first. */
function play(question: Question, all: readonly Asked[], how: How = {}): Won | Lost | null {
  const { known = knownByNature, also } = how;
  const { graph, starts, limits } = question;
  const { attributes, bits } = looksOf(graph);
  try {
    for (;;) {
      const classes = classesOf(starts.universe, attributes, bits, graph);
      const beliefs = new Beliefs(graph, classes, known, new Budget(limits.states, limits.goOn));
      let more = false;
      const isTrue = ({ meanings }: Asked, state: number): boolean => {
        const meaning = meanings.at(beliefs.load(state).id);
        if (meaning === null) return false;
        for (const formula of [meaning.formula, meaning.when]) {
          if (formula === undefined) continue;
          const reads = readsOf(formula);
          for (const name of reads.attributes)
            if (!attributes.has(name)) more = Boolean(attributes.add(name));
          for (const name of reads.bits) if (!bits.has(name)) more = Boolean(bits.add(name));
        }
        return !more && holds(meaning.formula, beliefs.view);
      };
      const first = beliefs.begin(starts.all());
      const result = solveGame(beliefs, first, (belief) =>
        belief.turn === 'end'
          ? belief.states.find((state) => !all.every((one) => isTrue(one, state)))
          : beliefs.stuckIn(belief),
      );
      if (more) continue;
      const count = beliefs.all.length;
      if (!result.won) {
        const { loss } = result;
        return { won: false, loss, stuck: stuckReason(question, beliefs, loss), beliefs: count };
      }
      const ends = [...reachedBy(first, result.branches, result.rule)].filter(
        ([id]) => beliefs.all[id].turn === 'end',
      );
      const ended = ends.flatMap(([id, path]) => beliefs.all[id].states.map((state) => ({ state, path })));
      const bad = also === undefined ? undefined : ended.find(({ state }) => !isTrue(also, state));
      if (more) continue;
      const met = (meanings: Meanings): boolean =>
        ended.some(({ state }) => {
          const when = meanings.at(beliefs.load(state).id)?.when;
          return when === undefined || holds(when, beliefs.view);
        });
      return {
        won: true,
        rule: written(beliefs, first, result.branches, result.rule),
        beliefs: count,
        reads: { attributes: [...attributes].sort(), bits: [...bits].sort() },
        ends: { exits: new Set(ended.map(({ state }) => beliefs.load(state).id)), met },
        failing: bad === undefined ? undefined : beliefs.wayThrough(bad.path, bad.state),
      };
    }
  } catch (error) {
    if (error instanceof BudgetEnded) return null;
    throw error;
  }
}

function stuckReason({ graph }: Question, beliefs: Beliefs, loss: Loss): Trouble | undefined {
  if (loss.is !== 'failure') return undefined;
  const here = beliefs.load(loss.state);
  return here.exit ? undefined : graph.waysFrom(here.id, seenAt(graph, here, beliefs.view)).stuck;
}

/** Why a sentence that holds under a rule says nothing, if so. */
function emptiness(meanings: Meanings, { sentence }: Ending, { ends }: Won): Trouble | undefined {
  if (ends.exits.size === 0) return trouble('never-ends');
  if ([...ends.exits].every((exit) => meanings.at(exit)?.vacuous === true)) return trouble('about-nothing');
  return sentence.says === 'if' && !ends.met(meanings) ? trouble('never-when') : undefined;
}

/** The secret that every working rule would need, if making one hidden choice known would make a rule possible. */
function missingSecret(question: Question, asked: Asked): Trouble | undefined {
  for (const secret of moveSteps(question.graph.routine.steps)) {
    if (knownByNature(secret)) continue;
    const known: Known = (step) => step.number === secret.number || knownByNature(step);
    const result = play(question, [asked], { known });
    if (result !== null && result.won) return trouble('needs-secret', { step: secret.number });
  }
  return undefined;
}
