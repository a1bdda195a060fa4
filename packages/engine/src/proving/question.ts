import type { Budget } from '../base/budget.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { Exit } from '../claims/claim.ts';
import type { Formula } from '../claims/formula.ts';
import { meaningOf } from '../claims/sentence.ts';
import type { Graph } from '../routine/graph.ts';
import type { Ending, Sentence } from '../routine/routine.ts';
import type { SentenceDecision } from './decision.ts';
import { startingOrders, type Starts } from '../routine/starts.ts';

/** How much may be spent, in counted work. The caller owns time: `goOn` is asked now and then and may end it. */
export interface Limits {
  /** Locations, edges and equations. */
  readonly work: number;
  /** Tables an exact search may keep for one sentence. */
  readonly states: number;
  readonly goOn?: (spent: number) => boolean;
  /** Random performances to try where the search does not finish. */
  readonly trials: number;
  readonly seed: number;
}

export const DEFAULT_LIMITS: Limits = { work: 40_000_000, states: 2_000_000, trials: 500, seed: 1 };

/** Everything the ways of deciding share. */
export interface Question {
  readonly graph: Graph;
  readonly starts: Starts;
  readonly limits: Limits;
  readonly budget: Budget;
}

/** What a sentence means at each exit where it may be judged, made once for each. */
export class Meanings {
  trouble: Trouble | undefined;
  private readonly made = new Map<
    number,
    { formula: Formula; vacuous: boolean; when: Formula | undefined }
  >();
  private readonly left = new Map<string, Trouble>();
  private readonly sentence: Sentence;
  private readonly question: Question;

  constructor(sentence: Sentence, question: Question) {
    this.sentence = sentence;
    this.question = question;
  }

  /** Whether the sentence speaks of nothing at every exit that was asked about, of which there was one at least. */
  allVacuous(): boolean {
    return this.made.size > 0 && [...this.made.values()].every(({ vacuous }) => vacuous);
  }

  /** What the sentence leaves unsaid at the exits that were asked about, each once. */
  asides(): readonly Trouble[] {
    return [...this.left.values()];
  }

  /** Null, and `trouble` set, when the sentence makes no sense there. */
  at(exit: number): { formula: Formula; vacuous: boolean; when: Formula | undefined } | null {
    const known = this.made.get(exit);
    if (known !== undefined) return known;
    const view = exitView(this.question, exit);
    const meaning = meaningOf(this.sentence, view);
    const when = this.sentence.says === 'if' ? meaningOf(this.sentence.when, view) : undefined;
    if (!meaning.ok || (when !== undefined && !when.ok)) {
      this.trouble ??= meaning.ok ? undefined : meaning.error;
      if (when !== undefined && !when.ok) this.trouble ??= when.error;
      return null;
    }
    const made = {
      formula: meaning.value.formula,
      vacuous: meaning.value.vacuous === true,
      when: when?.value.formula,
    };
    this.made.set(exit, made);
    for (const aside of meaning.value.asides ?? []) this.left.set(JSON.stringify(aside), aside);
    return made;
  }
}

function exitView(question: Question, exit: number): Exit {
  const { layout, numbers } = question.graph.locations[exit];
  return {
    layout,
    numbers,
    cards: question.starts.universe,
    start: startingOrders(question.graph.routine),
  };
}

/** Why a sentence says nothing at all, if so. */
export function emptyReason(
  all: readonly { readonly vacuous: boolean; readonly when: Formula | undefined }[],
  exits: number,
): Trouble | undefined {
  if (exits === 0) return trouble('never-ends');
  if (all.every(({ vacuous }) => vacuous)) return trouble('about-nothing');
  if (all.every(({ when }) => when !== undefined && when.is === 'known' && !when.holds))
    return trouble('never-when');
  return undefined;
}

export const NOTHING = {
  method: 'sizes',
  failure: undefined,
  solved: [],
  reads: undefined,
  states: 0,
  rows: 0,
  trials: undefined,
  rule: undefined,
  chance: undefined,
  reason: undefined,
} as const;

export function undecided(ending: Ending, reason: Trouble): SentenceDecision {
  return { ...NOTHING, ending, verdict: 'undecided', reason };
}
