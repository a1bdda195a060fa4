import { Budget } from '../../base/budget.ts';
import { trouble, type Trouble } from '../../base/diagnostic.ts';
import { bad, good, type Result } from '../../base/result.ts';
import { moveById } from '../../moves/index.ts';
import { layoutKey, type Layout } from '../../pictures/layout.ts';
import { decide } from '../../proving/decide.ts';
import type { Decision, SentenceDecision } from '../../proving/decision.ts';
import type { Limits } from '../../proving/question.ts';
import { BudgetEnded } from '../../routine/graph.ts';
import { Rearrangements } from '../../routine/rearrangements.ts';
import type { MoveStep, Routine } from '../../routine/routine.ts';
import type { Candidate } from './candidates.ts';
import { FreedomMemory } from './memory.ts';
import { SAFE, unsettled, type FreedomRow, type Judged } from './row.ts';
import { judgeGraph } from './judge-graph.ts';
import { judgeWays } from './judge-ways.ts';
import { Mix } from '../altering/mix.ts';
import { withSteps, type Place } from '../altering/places.ts';
import { familiesOf, probedGraph, type Family, type Probed } from '../altering/probed.ts';
import { safePairs, safeTriples, type Part, type SequencesAsked } from './sequences.ts';
import { ALL_OPS, Closed } from '../altering/spaces.ts';
import type { Spot } from './spot.ts';
import { Visits } from './visits.ts';

/** How far something can be said of a place. */
export type Reach = 'reached' | 'never reached' | 'behind a look';

// One candidate's share in a complete search; all together have the limits' tables.
const MOST_TABLES = 20_000;
const MOST_WORK = 2_000_000;

// As much as makes a budget ask its caller.
const TICK = 2_000;

/** A candidate with its mix on the piles of each location. */
interface Offered extends Candidate {
  readonly mixes: ReadonlyMap<string, Mix>;
}

interface Line {
  readonly families: readonly Family[];
  readonly closed: readonly Closed[];
}

/** What else could be done at every place of a routine with proved sentences. */
export class Freedom {
  readonly places: readonly Place[];
  /** Sentences that are not proved: nothing is said of them. */
  readonly leftOut: readonly SentenceDecision[];
  private readonly routine: Routine;
  private readonly limits: Limits;
  private readonly probed: Probed;
  private readonly linear: readonly SentenceDecision[];
  private readonly others: readonly SentenceDecision[];
  private narrow: readonly Line[] | undefined;
  private wide: readonly Line[] | undefined;
  private readonly visitsKnown = new Map<string, readonly Visits[]>();
  private statesLeft: number;
  private readonly budget: Budget;
  private readonly memory: FreedomMemory;

  private constructor(routine: Routine, decision: Decision, limits: Limits, memory: FreedomMemory) {
    this.routine = routine;
    this.limits = limits;
    this.memory = memory;
    this.budget = new Budget(limits.work, limits.goOn);
    this.statesLeft = limits.states;
    const proved = decision.sentences.filter(({ verdict }) => verdict === 'proved');
    this.leftOut = decision.sentences.filter(({ verdict }) => verdict !== 'proved');
    this.linear = proved.filter(({ method }) => method === 'linear' || method === 'sizes');
    this.others = proved.filter(({ method }) => method !== 'linear' && method !== 'sizes');
    this.probed = probedGraph(routine, this.budget);
    this.places = this.probed.places;
  }

  /** Bad where no sentence is proved. Throws BudgetEnded when the limits are spent. */
  static of(
    routine: Routine,
    decision: Decision,
    limits: Limits,
    memory: FreedomMemory = new FreedomMemory(),
  ): Result<Freedom, Trouble> {
    if (!decision.sentences.some(({ verdict }) => verdict === 'proved'))
      return bad(trouble('freedom-nothing-proved', { verdict: decision.verdict }));
    return good(new Freedom(routine, decision, limits, memory));
  }

  /** Whether the place is met in some performance; behind a look at cards it is not known which piles there are. */
  reach(place: Place): Reach {
    if (this.layoutsAt(place).length > 0) return 'reached';
    const { graph, region } = this.probed;
    return region.order.some((id) => graph.locations[id].looks) ? 'behind a look' : 'never reached';
  }

  /**
   * Everything that could be put in at a place, in the order of what hands do, each as soon as it is known. Mixes that change nothing
   * and those that do what an earlier one does are left out. Throws BudgetEnded.
   */
  *at(place: Place): Generator<FreedomRow> {
    const layouts = this.layoutsAt(place);
    if (layouts.length === 0) return;
    // The key costs some equations, and the first row should not wait for them in vain.
    const early = this.memory.isEmpty ? null : this.momentKey(place, layouts);
    const known = early === null ? undefined : this.memory.recall(early);
    if (known !== undefined) {
      yield* known;
      return;
    }
    const rows: FreedomRow[] = [];
    for (const { text, steps, hands, mix, mixes } of this.offered(layouts)) {
      this.tick();
      const judged = this.judge(place, steps, mixes);
      mix.tidy();
      if (judged === null) continue;
      const row = { text, steps, hands, ...judged };
      rows.push(row);
      yield row;
    }
    const key = early ?? this.momentKey(place, layouts);
    if (key !== null) this.memory.keep(key, rows);
  }

  /** Candidates that fit wherever the place is met, each that does something new once. */
  private *offered(layouts: readonly Layout[]): Generator<Offered> {
    const bits = this.relevantBits();
    const seen = new Set<string>();
    for (const candidate of this.memory.books.for(layouts[0]).all()) {
      const mixes = mixesFor(candidate.steps, candidate.mix, layouts);
      if (mixes === null) continue;
      const keys = [...mixes.values()].map((mix) => mix.sameness(bits));
      if (keys.every((key) => key === '')) continue;
      if (keys.every((key) => key !== null)) {
        const key = JSON.stringify(keys);
        if (seen.has(key)) continue;
        seen.add(key);
      }
      yield { ...candidate, mixes };
    }
  }

  /** Null where what is allowed depends on more than one moment: a complete search looks at the whole working. */
  private momentKey(place: Place, layouts: readonly Layout[]): string | null {
    if (this.others.length > 0) return null;
    const number = this.numberOf(place);
    const { graph, at } = this.probed;
    const piles = at[number].map((id) => layoutKey(graph.locations[id].layout));
    const visits = this.visits(place, new Set(ALL_OPS));
    return JSON.stringify([this.relevantBits(), layouts.length, piles, visits.map((one) => one.key())]);
  }

  /** Asks the caller whether to go on. */
  private tick(): void {
    if (!this.budget.tick(TICK)) throw new BudgetEnded('stopped while mixes were judged');
  }

  /**
   * Two or three moves one after the other that keep the sentences certain though not each of them does, each as soon as it is known.
   * Throws BudgetEnded.
   */
  *sequences(place: Place, moves: 2 | 3): Generator<FreedomRow> {
    const layouts = this.layoutsAt(place);
    if (layouts.length === 0) return;
    const { graph, at } = this.probed;
    const locations = at[this.numberOf(place)];
    const safe = new Set(
      [...this.at(place)].flatMap(({ verdict, text }) => (verdict === 'safe' ? [text] : [])),
    );
    const parts = [...this.offered(layouts)].map((offered): Part => ({
      ...offered,
      isSafe: safe.has(offered.text),
      mixAt: (location) => offered.mixes.get(layoutKey(graph.locations[location].layout)) ?? offered.mix,
    }));
    const made = new Rearrangements();
    const seen = new Set(parts.map(({ mix }) => mix.sameness(this.relevantBits())));
    const asked: SequencesAsked = {
      parts,
      spot: { locations, visits: (ops) => this.visits(place, ops) },
      bits: this.relevantBits(),
      tick: () => this.tick(),
      judge: (sequence) => {
        const steps = sequence.flatMap((part) => part.steps);
        const mix = new Mix(steps, layouts[0], made);
        const key = layouts.length === 1 ? mix.sameness(this.relevantBits()) : null;
        if (key === '' || (key !== null && seen.has(key))) return null;
        if (key !== null) seen.add(key);
        const mixes = mixesFor(steps, mix, layouts);
        return mixes === null ? null : this.judge(place, steps, mixes);
      },
    };
    yield* moves === 2 ? safePairs(asked) : safeTriples(asked);
  }

  /** Whether these steps may be put in; null where they do not fit: the piles do not come out as they were. */
  try(place: Place, text: string, steps: readonly MoveStep[]): FreedomRow | null {
    const layouts = this.layoutsAt(place);
    if (layouts.length === 0 || steps.length === 0) return null;
    const mix = new Mix(steps, layouts[0]);
    const mixes = mix.plain() === null ? null : mixesFor(steps, mix, layouts);
    const judged = mixes === null ? null : this.judge(place, steps, mixes);
    return judged === null ? null : { text, steps, hands: moveById(steps[0].move).hands, ...judged };
  }

  /** The routine with steps put in, decided anew: where it fails, with the shortest performance that does. */
  performanceWith(place: Place, steps: readonly MoveStep[]): Decision {
    return decide(withSteps(this.routine, place, steps), this.limits);
  }

  private numberOf(place: Place): number {
    return this.places.findIndex(({ id }) => id === place.id);
  }

  private layoutsAt(place: Place): Layout[] {
    const { graph, at } = this.probed;
    const found = new Map<string, Layout>();
    for (const id of at[this.numberOf(place)] ?? []) {
      const { layout } = graph.locations[id];
      found.set(layoutKey(layout), layout);
    }
    return [...found.values()];
  }

  private relevantBits(): number {
    if (this.others.length > 0) return 0xffffffff;
    const { graph } = this.probed;
    const bits = this.lines(false).flatMap(({ families }) =>
      families.flatMap(({ problem }) => problem.members.flatMap(({ space }) => space.bits)),
    );
    return bits.reduce((mask, bit) => mask | (3 << (2 * graph.bits.indexOf(bit))), 0);
  }

  private lines(isWide: boolean): readonly Line[] {
    const known = isWide ? this.wide : this.narrow;
    if (known !== undefined) return known;
    const lines = this.linear.map(({ ending }): Line => {
      const families = familiesOf(this.probed, ending, isWide ? ALL_OPS : [], this.limits);
      // It was decided by equations before.
      if (families === null) throw new Error('a sentence that was equations is none now');
      return { families, closed: families.map((family) => new Closed(family)) };
    });
    if (isWide) this.wide = lines;
    else this.narrow = lines;
    return lines;
  }

  private visits(place: Place, ops: ReadonlySet<number>): readonly Visits[] {
    const isWide = this.lines(false).some(({ closed }) =>
      closed.some((one) => [...ops].some((op) => !one.under(op))),
    );
    const key = `${isWide}${place.id}`;
    let found = this.visitsKnown.get(key);
    if (found === undefined) {
      const number = this.numberOf(place);
      found = this.lines(isWide).flatMap(({ families }) =>
        families.map((family) => new Visits(this.probed, number, family)),
      );
      this.visitsKnown.set(key, found);
    }
    return found;
  }

  private judge(place: Place, steps: readonly MoveStep[], mixes: ReadonlyMap<string, Mix>): Judged | null {
    const [first] = mixes.values();
    const { graph, at } = this.probed;
    const spot: Spot = {
      locations: at[this.numberOf(place)],
      mixAt: (location) =>
        mixes.size === 1 ? first : (mixes.get(layoutKey(graph.locations[location].layout)) ?? first),
      visits: (ops) => this.visits(place, ops),
    };
    const found = judgeWays(spot) ?? judgeGraph(spot);
    if (found === null || this.others.length === 0 || found.verdict === 'unsafe') return found;
    const rest = this.bySearch(place, steps);
    if (rest.verdict === 'safe') return found;
    // Which of the choices a search would let pass is not worked out.
    return found.verdict === 'some' && rest.verdict === 'unsafe'
      ? unsettled(trouble('freedom-some-unsettled'))
      : rest;
  }

  /** Sentences that are no equations: the routine with the steps put in is decided anew, within what is left to spend. */
  private bySearch(place: Place, steps: readonly MoveStep[]): Judged {
    const most = Math.min(this.statesLeft, MOST_TABLES);
    if (most <= 0) return unsettled(trouble('freedom-tables-spent', { tables: this.limits.states }));
    const changed = withSteps(this.routine, place, steps);
    const endings = this.others.map(({ ending }) => ending);
    const limits: Limits = { ...this.limits, work: MOST_WORK, states: most, trials: 0 };
    const { sentences, verdict } = decide({ ...changed, endings }, limits);
    this.statesLeft -= Math.max(1_000, ...sentences.map(({ states }) => states));
    if (verdict === 'proved') return SAFE;
    if (verdict === 'refuted') return { verdict: 'unsafe', which: null, reason: null };
    const open = sentences.find((sentence) => sentence.verdict !== 'proved');
    return unsettled(open?.reason ?? trouble('freedom-tables-spent', { tables: most }));
  }
}

function mixesFor(
  steps: readonly MoveStep[],
  mix: Mix,
  layouts: readonly Layout[],
): ReadonlyMap<string, Mix> | null {
  const mixes = new Map([[layoutKey(layouts[0]), mix]]);
  for (const layout of layouts.slice(1)) {
    const other = new Mix(steps, layout);
    if (other.plain() === null) return null;
    mixes.set(layoutKey(layout), other);
  }
  return mixes;
}
