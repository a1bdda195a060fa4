import { Budget } from '../../base/budget.ts';
import { trouble, type Trouble } from '../../base/diagnostic.ts';
import { bad, good, type Result } from '../../base/result.ts';
import type { Chance } from '../../proving/chance-found.ts';
import type { Decision, SentenceDecision } from '../../proving/decision.ts';
import { Meanings, type Limits, type Question } from '../../proving/question.ts';
import { regionFrom, type Region } from '../../proving/region.ts';
import { BudgetEnded, Graph } from '../../routine/graph.ts';
import type { Ending, Routine } from '../../routine/routine.ts';
import { slipChance } from './chance.ts';
import { AffineSlips, type SlippedPath } from './affine.ts';
import { noOutcome, tryOn, type Outcomes } from './outcomes.ts';
import { endsOf, possibleSlips, waysIn, type PossibleSlip } from './possible.ts';
import { NOT_TOLD, Visible, type Notice } from './visible.ts';
import { SlipWalk, type Walked, type WalkJudged } from './walk.ts';

/**
 * What a slip does to a sentence that holds without it: it still holds whatever is chosen; it holds for some choices; it fails for every
 * one; it does not hold always, but whether ever was not found; nothing was found.
 */
export type SlipVerdict = 'harmless' | 'sometimes' | 'fatal' | 'harmful' | 'undecided';

/** One sentence under one slip. */
export interface SlipOnSentence {
  readonly ending: Ending;
  readonly verdict: SlipVerdict;
  /** A performance with the slip in which the sentence fails or that gets stuck. */
  readonly failure: SlippedPath | undefined;
  /** Keys of the ways to slip that do no harm; null where that was not told way by way. */
  readonly harmlessKeys: ReadonlySet<string> | null;
}

/** One kind of slip in one step, and what follows from it. */
export interface SlipFinding {
  readonly possible: PossibleSlip;
  readonly ways: number;
  /** Of the whole ending. */
  readonly verdict: SlipVerdict;
  /** Sentences that hold without the slip. */
  readonly sentences: readonly SlipOnSentence[];
  readonly notice: Notice;
  /** Which of the other endings that were asked about are certain all the same. */
  readonly remains: readonly Ending[];
}

/** Dearer questions about one slip, each answered once. */
interface Ask {
  readonly tries: () => Outcomes;
  readonly walk: () => Walked | null;
}

// Tables without any slip that are looked at where everything has to be tried, and one slip's share.
const MOST_EXPLORED = 100_000;
const MOST_TABLES = 20_000;
// Performances that are tried to find one which comes out.
const MOST_EXAMPLES = 12;

/**
 * Slips in every step of a routine with proved sentences. Everything is asked of one graph: a slip is an edge between what is certain
 * before it and what is needed behind it, and where that cannot be said as equations everything is tried.
 */
export class Slips {
  readonly graph: Graph;
  /** Sentences that are not proved: nothing is said of them. */
  readonly leftOut: readonly SentenceDecision[];
  private readonly question: Question;
  private readonly limits: Limits;
  private readonly sentences: readonly SentenceDecision[];
  /** Endings besides those of the note, of which only certainty is asked. */
  private readonly besides: readonly Ending[];
  private readonly all: readonly PossibleSlip[];
  private readonly wide: Region | undefined;
  /** All operations on bits that steps and slips do. */
  private readonly ops: readonly number[] = [];
  private readonly affine = new Map<Ending, AffineSlips | null>();
  private readonly visible: Visible | undefined;
  private walk: SlipWalk | null | undefined;
  private statesLeft: number;

  private constructor(routine: Routine, decision: Decision, besides: readonly Ending[], limits: Limits) {
    const budget = new Budget(limits.work, limits.goOn);
    this.limits = limits;
    this.besides = besides;
    this.statesLeft = limits.states;
    this.graph = new Graph(routine);
    const { graph } = this;
    this.question = { graph, starts: decision.starts, limits, budget };
    this.sentences = decision.sentences.filter(({ verdict }) => verdict === 'proved');
    this.leftOut = decision.sentences.filter(({ verdict }) => verdict !== 'proved');
    if (graph.locations[graph.start].looksAhead) {
      const walk = this.walked(MOST_EXPLORED);
      if (walk === null) throw new BudgetEnded('too many tables');
      this.walk = walk;
      this.all = possibleSlips(graph, walk.sightings, budget);
      return;
    }
    const { order } = regionFrom(graph, [graph.start], budget);
    this.all = possibleSlips(
      graph,
      order.map((location) => ({ location, seen: undefined })),
      budget,
    );
    const ends = [...new Set(this.all.flatMap(endsOf))];
    this.wide = regionFrom(graph, [graph.start, ...ends], budget);
    const ops = new Set(this.wide.ops);
    for (const { moments } of this.all)
      for (const { decisions } of moments)
        for (const { effect } of decisions.flat()) for (const op of effect.ops ?? []) ops.add(op);
    this.ops = [...ops];
    this.visible = new Visible(graph, decision.starts.spanning, order);
  }

  /** Bad where no sentence is proved, or the limits do not reach. */
  static of(
    routine: Routine,
    decision: Decision,
    limits: Limits,
    besides: readonly Ending[] = [],
  ): Result<Slips, Trouble> {
    if (!decision.sentences.some(({ verdict }) => verdict === 'proved'))
      return bad(trouble('slips-nothing-proved', { verdict: decision.verdict }));
    try {
      return good(new Slips(routine, decision, besides, limits));
    } catch (error) {
      if (!(error instanceof BudgetEnded)) throw error;
      const looks = decision.graph.locations[decision.graph.start].looksAhead;
      return bad(
        looks
          ? trouble('budget-tables', { tables: Math.min(limits.states, MOST_EXPLORED) })
          : trouble('budget-graph', { work: limits.work }),
      );
    }
  }

  /** Every slip there can be, in the order of the note. */
  get possible(): readonly PossibleSlip[] {
    return this.all;
  }

  /** What follows from each slip, as soon as it is known. What is spent is bounded by the limits; where they end, slips are undecided. */
  *findings(): Generator<SlipFinding> {
    for (const possible of this.all) yield this.finding(possible);
  }

  finding(possible: PossibleSlip): SlipFinding {
    let tries: Outcomes | undefined;
    let walked: Walked | null | undefined;
    const ask: Ask = {
      tries: () => (tries ??= this.someOutcomes(possible)),
      walk: () => (walked ??= this.tryAll(possible)),
    };
    const sentences = this.sentences.map((sentence, i) => this.onSentence(sentence, possible, i, ask));
    const verdict = overall(sentences, ask);
    const isHarmful = verdict !== 'harmless' && verdict !== 'undecided';
    return {
      possible,
      ways: waysIn(possible),
      verdict,
      sentences,
      notice: this.noticed(possible),
      remains: isHarmful ? this.besides.filter((ending) => this.staysCertain(ending, possible)) : [],
    };
  }

  /** How likely the ending comes out all the same; null where no such chance is to be told. */
  chance(possible: PossibleSlip): Chance | null {
    const { graph, starts } = this.question;
    const endings = this.sentences.map(({ ending }) => ending);
    return (
      this.spared(() =>
        slipChance({ routine: graph.routine, graph, starts }, possible, endings, this.limits),
      ) ?? null
    );
  }

  private onSentence(
    { ending, method }: SentenceDecision,
    possible: PossibleSlip,
    number: number,
    ask: Ask,
  ): SlipOnSentence {
    const open: SlipOnSentence = { ending, verdict: 'undecided', failure: undefined, harmlessKeys: null };
    // What rests on a rule of the performer's, or on luck, is not followed through a slip.
    if (method === 'rule' || method === 'chance') return open;
    const judge = this.affineFor(ending);
    if (judge === null) return { ...open, ...told(ask.walk()?.each[number]) };
    const judged = this.spared(() => judge.judge(possible));
    if (judged === undefined) return open;
    const { isHarmless, failure, harmlessKeys } = judged;
    const found = (verdict: SlipVerdict): SlipOnSentence => ({ ending, verdict, failure, harmlessKeys });
    if (isHarmless) return found('harmless');
    if (ask.tries().each[number]) return found('sometimes');
    if (this.spared(() => judge.failsAlways(possible)) === true) return found('fatal');
    const tried = ask.walk()?.each[number];
    if (tried === undefined) return found('harmful');
    return found(tried.comesOut ? 'sometimes' : 'fatal');
  }

  /** Null where the sentence is no conjunction of equations, or the work allowed is spent. */
  private affineFor(ending: Ending): AffineSlips | null {
    let judge = this.affine.get(ending);
    if (judge !== undefined) return judge;
    const { wide } = this;
    judge = null;
    if (wide !== undefined) {
      const { graph, starts, budget } = this.question;
      const meanings = new Meanings(ending.sentence, this.question);
      judge =
        this.spared(() => AffineSlips.of({ graph, starts, region: wide, budget }, meanings, this.ops)) ??
        null;
    }
    this.affine.set(ending, judge);
    return judge;
  }

  private staysCertain(ending: Ending, possible: PossibleSlip): boolean {
    const judge = this.affineFor(ending);
    return judge !== null && this.spared(() => judge.judge(possible).isHarmless) === true;
  }

  /** Which sentences hold after some performances with the slip. */
  private someOutcomes(possible: PossibleSlip): Outcomes {
    const outcomes = noOutcome(this.sentences.length);
    const judge = this.sentences.map(({ ending }) => this.affineFor(ending)).find((one) => one !== null);
    if (judge === undefined || judge === null) return outcomes;
    const meanings = this.sentences.map(({ ending }) => new Meanings(ending.sentence, this.question));
    this.spared(() =>
      tryOn(this.question, judge.examples(possible, MOST_EXAMPLES), meanings, this.limits.seed, outcomes),
    );
    return outcomes;
  }

  private tryAll(possible: PossibleSlip): Walked | null {
    // Where equations told what they could, a short search is made of the rest.
    const isAffine = this.sentences.every(({ ending }) => this.affineFor(ending) !== null);
    if (this.walk === undefined) this.walk = this.walked(isAffine ? MOST_TABLES : MOST_EXPLORED);
    const { walk } = this;
    if (walk === null) return null;
    return this.spared(() => walk.judge(possible, this.share())) ?? null;
  }

  private walked(most: number): SlipWalk | null {
    const { graph, starts } = this.question;
    const meanings = this.sentences.map(({ ending }) => new Meanings(ending.sentence, this.question));
    return this.spared(() => new SlipWalk({ graph, starts, meanings }, this.share(most))) ?? null;
  }

  /** Tables for one question out of those that are left. */
  private share(most = MOST_TABLES): Budget {
    const states = Math.min(most, this.statesLeft);
    this.statesLeft -= states / 4;
    return new Budget(states, this.limits.goOn);
  }

  private noticed({ moments }: PossibleSlip): Notice {
    const { visible } = this;
    if (visible === undefined) return NOT_TOLD;
    return this.spared(() => visible.noticed(moments)) ?? NOT_TOLD;
  }

  private spared<T>(work: () => T): T | undefined {
    try {
      return work();
    } catch (error) {
      if (error instanceof BudgetEnded) return undefined;
      throw error;
    }
  }
}

function told(walked: WalkJudged | undefined): Pick<SlipOnSentence, 'verdict' | 'failure'> {
  if (walked === undefined) return { verdict: 'undecided', failure: undefined };
  const { failure, comesOut } = walked;
  if (failure === undefined) return { verdict: 'harmless', failure };
  return { verdict: comesOut ? 'sometimes' : 'fatal', failure };
}

/** The whole ending: it fails where one of its sentences does. */
function overall(sentences: readonly SlipOnSentence[], ask: Ask): SlipVerdict {
  const has = (verdict: SlipVerdict): boolean => sentences.some((one) => one.verdict === verdict);
  if (has('fatal')) return 'fatal';
  const isHarmful = has('sometimes') || has('harmful');
  if (has('undecided')) return isHarmful ? 'harmful' : 'undecided';
  if (!isHarmful) return 'harmless';
  const spoilt = sentences.filter(({ verdict }) => verdict !== 'harmless');
  if (spoilt.length === 1) return spoilt[0].verdict;
  // Each may come out, and yet not all of them together.
  if (ask.tries().together) return 'sometimes';
  const tried = ask.walk();
  return tried === null ? 'harmful' : tried.together ? 'sometimes' : 'fatal';
}
