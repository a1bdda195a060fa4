import type { Fix, Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import { alterationsOf, type AlterationRow } from '../insight/freedom/alterations.ts';
import type { FreedomMemory } from '../insight/freedom/memory.ts';
import { Freedom } from '../insight/freedom/freedom.ts';
import type { FreedomRow } from '../insight/freedom/row.ts';
import { sayPlace, stepsOf, withSteps, type Place } from '../insight/altering/places.ts';
import { sayParts } from '../insight/freedom/sequences.ts';
import { decide } from '../proving/decide.ts';
import type { Decision } from '../proving/decision.ts';
import type { Limits } from '../proving/question.ts';
import { BudgetEnded } from '../routine/graph.ts';
import type { MoveStep, Routine } from '../routine/routine.ts';
import { sentenceOf } from './choices.ts';
import { failureData, type Describe } from './failure.ts';
import type { AlterationData, FreedomPlace, FreedomReport, FreedomRowData } from './freedom-data.ts';
import { insertion } from './insertion.ts';
import type { FailureData } from './report.ts';

/** What a desk is opened with. */
export interface DeskParts {
  /** The note. */
  readonly text: string;
  readonly routine: Routine;
  readonly decision: Decision;
  readonly limits: Limits;
  readonly describe: Describe;
  /** What was found of notes like this one. */
  readonly memory?: FreedomMemory;
}

/** The number that steps put in carry in a performance. */
const PUT_IN = '+';

/**
 * Everything else that could be done in a proved note, asked for place by place. What goes in and comes out is plain data; what was
 * worked out is kept between two questions. Its methods never throw for anything in the note: where the limits are spent they
 * say so.
 */
export class FreedomDesk {
  readonly places: readonly FreedomPlace[];
  private readonly parts: DeskParts;
  private readonly freedom: Freedom;
  private readonly found = new Map<string, Map<string, readonly MoveStep[]>>();
  private readonly altered = new Map<string, readonly AlterationRow[]>();

  private constructor(parts: DeskParts, freedom: Freedom) {
    this.parts = parts;
    this.freedom = freedom;
    this.places = freedom.places.map((place): FreedomPlace => {
      const { before } = place;
      return {
        id: place.id,
        words: sayPlace(place),
        number: before?.number ?? '',
        sentence: before === undefined ? '' : sentenceOf(before, parts.text),
        range: before?.range ?? null,
        reach: freedom.reach(place),
      };
    });
  }

  /** Bad where no sentence is proved, or the limits do not reach as far as the graph. */
  static open(parts: DeskParts): Result<FreedomDesk, Trouble> {
    const freedom = spared(parts, () =>
      Freedom.of(parts.routine, parts.decision, parts.limits, parts.memory),
    );
    if (!freedom.ok) return freedom;
    if (!freedom.value.ok) return freedom.value;
    return good(new FreedomDesk(parts, freedom.value.value));
  }

  /** The rows of a place, each as soon as it is known; what comes last says why the list ended early, or null. */
  rows(place: string): Generator<FreedomRowData, Trouble | null> {
    return this.tellAll(place, (at) => this.freedom.at(at));
  }

  /**
   * Two or three moves one after the other that keep the ending certain though not each of them does: all are safe, and they are
   * asked about by their text like any row. Three moves are only such as leave no choice.
   */
  sequences(place: string, moves: 2 | 3): Generator<FreedomRowData, Trouble | null> {
    return this.tellAll(place, (at) => this.freedom.sequences(at, moves));
  }

  /** Rows done one after the other, whatever they are by themselves; null where one of them is not there or they do not fit. */
  together(place: string, texts: readonly string[]): FreedomRowData | null {
    const at = this.placeOf(place);
    const parts = texts.map((text) => this.stepsOf(place, text));
    if (at === undefined || !parts.every((steps) => steps !== undefined)) return null;
    const text = sayParts(texts.map((one) => ({ text: one })));
    const row = spared(this.parts, () => this.freedom.try(at, text, parts.flat()));
    return row.ok && row.value !== null ? this.told(place, row.value) : null;
  }

  /** Null for a place that is not there. */
  report(place: string): FreedomReport | null {
    const found = this.places.find(({ id }) => id === place);
    if (found === undefined) return null;
    const rows: FreedomRowData[] = [];
    const all = this.rows(place);
    let next = all.next();
    for (; next.done !== true; next = all.next()) rows.push(next.value);
    const left = new Set(this.freedom.leftOut.map(({ ending }) => ending.text));
    const sentences = this.parts.routine.endings.map(({ text }) => text);
    return {
      place: found,
      sentences: sentences.filter((text) => !left.has(text)),
      leftOut: sentences.filter((text) => left.has(text)),
      rows,
      ended: next.value,
    };
  }

  /**
   * The shortest performance that fails when a row's sentences are put in at the place, whatever is chosen in them; null where none
   * is known. Steps put in have the number `+`.
   */
  failure(place: string, text: string): FailureData | null {
    const at = this.placeOf(place);
    const steps = this.stepsOf(place, text);
    if (at === undefined || steps === undefined) return null;
    return this.failureOf((note) => {
      const made = written(steps, text, note.length + 1);
      return { note: `${note}\n${text}`, routine: withSteps(this.parts.routine, at, made) };
    });
  }

  /** The change of the note's text that puts a row in; null where the note leaves no line for it. */
  edit(place: string, text: string): Fix | null {
    const at = this.placeOf(place);
    const steps = this.stepsOf(place, text);
    if (at === undefined || steps === undefined) return null;
    return insertion(this.parts.text, at, text, withSteps(this.parts.routine, at, steps));
  }

  /** The step's changes, each as soon as it is known; none for a step that is not there. */
  *alterations(step: string): Generator<AlterationData, Trouble | null> {
    const { routine, decision, limits } = this.parts;
    const found = stepsOf(routine).find(({ number }) => number === step);
    if (found === undefined) return null;
    const known: AlterationRow[] = [];
    const rows = alterationsOf(routine, decision, found, limits);
    for (;;) {
      const next = spared(this.parts, () => rows.next());
      if (!next.ok) return next.error;
      if (next.value.done === true) break;
      known.push(next.value.value);
      yield alterationData(next.value.value);
    }
    this.altered.set(step, known);
    return null;
  }

  /** The shortest performance that fails with a step changed; null where none is known. */
  alterationFailure(step: string, kind: AlterationData['kind']): FailureData | null {
    if (!this.altered.has(step)) for (const _ of this.alterations(step));
    const row = this.altered.get(step)?.find((one) => one.kind === kind);
    return row === undefined ? null : this.failureOf((note) => ({ note, routine: row.routine }));
  }

  private *tellAll(
    place: string,
    find: (at: Place) => Generator<FreedomRow>,
  ): Generator<FreedomRowData, Trouble | null> {
    const at = this.placeOf(place);
    if (at === undefined) return null;
    const rows = find(at);
    for (;;) {
      const next = spared(this.parts, () => rows.next());
      if (!next.ok) return next.error;
      if (next.value.done === true) return null;
      yield this.told(place, next.value.value);
    }
  }

  private placeOf(id: string): Place | undefined {
    return this.freedom.places.find((place) => place.id === id);
  }

  private told(place: string, row: FreedomRow): FreedomRowData {
    const { text, hands, verdict, which, reason, steps } = row;
    let known = this.found.get(place);
    if (known === undefined) this.found.set(place, (known = new Map<string, readonly MoveStep[]>()));
    known.set(text, steps);
    if (which?.narrowed) known.set(which.narrowed.text, which.narrowed.steps);
    return {
      text,
      hands,
      status: verdict,
      words: which?.words ?? (reason === null ? '' : this.parts.describe(reason).words),
      choices: which === null ? null : { ...which, narrowed: which.narrowed?.text ?? null },
    };
  }

  private stepsOf(place: string, text: string): readonly MoveStep[] | undefined {
    if (this.found.get(place)?.has(text) !== true) for (const _ of this.rows(place));
    return this.found.get(place)?.get(text);
  }

  private failureOf(change: (note: string) => { note: string; routine: Routine }): FailureData | null {
    const { text, limits, describe } = this.parts;
    const { note, routine } = change(text);
    const decision = decide(routine, limits);
    const failed = decision.sentences.flatMap((sentence) =>
      sentence.failure === undefined ? [] : [{ sentence, failure: sentence.failure }],
    );
    const [first] = failed.sort((a, b) => a.failure.way.cost - b.failure.way.cost);
    return first === undefined ? null : failureData(decision, first.sentence, first.failure, note, describe);
  }
}

/** Steps with their place in the sentences at `from`, one sentence a step. */
function written(steps: readonly MoveStep[], text: string, from: number): MoveStep[] {
  let at = from;
  const sentences = text.replace(/\.$/, '').split('; ');
  return steps.map((step, i) => {
    const range = { from: at, to: at + sentences[i].length };
    at = range.to + 2;
    return { ...step, number: PUT_IN, range };
  });
}

function alterationData({ number, kind, text, verdict }: AlterationRow): AlterationData {
  return { number, kind, text, verdict };
}

function spared<T>({ limits }: Pick<DeskParts, 'limits'>, work: () => T): Result<T, Trouble> {
  try {
    return good(work());
  } catch (error) {
    if (!(error instanceof BudgetEnded)) throw error;
    return bad({ code: 'budget-graph', facts: { work: limits.work } });
  }
}
