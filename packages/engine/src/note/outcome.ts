import { diagnostic, type Diagnostic, type Facts, type Range, type Severity } from '../base/diagnostic.ts';
import type { Reading } from '../moves/move.ts';
import type { Names } from '../phrases/values.ts';
import type { IfStep, Step } from '../routine/routine.ts';
import type { Context } from './clause.ts';
import type { Line, Span } from './line.ts';
import { merged } from './names.ts';

/** A stretch of the note and how `format` writes it; null where no phrase of ours says it. */
export interface Print {
  readonly range: Range;
  readonly say: () => string | null;
}

/** A word of the trade with two meanings, where it stands, and how it was taken. */
export interface TakenReading {
  readonly range: Range;
  readonly reading: Reading;
}

/** A sentence that was not understood, with what it may refer to; it is explained when all is read. */
export interface Unread {
  readonly of: 'working' | 'block';
  readonly line: Line;
  readonly span: Span;
  readonly context: Context;
}

/** What reading some sentences gave. */
export interface Outcome {
  readonly steps: readonly Step[];
  readonly context: Context;
  /** Begins with an `Otherwise:` whose `If` must be the step before. */
  readonly otherwise: { readonly body: readonly Step[]; readonly range: Range; readonly names: Names } | null;
  /**
   * Ends with an `If` that an `Otherwise:` may follow: names at the end of its steps, the context before it, and whether its steps are
   * those for "not".
   */
  readonly fork: { readonly names: Names; readonly before: Context; readonly not: boolean } | null;
  readonly diagnostics: readonly Diagnostic[];
  readonly unread: readonly Unread[];
  readonly prints: readonly Print[];
  readonly readings: readonly TakenReading[];
}

export function nothing(context: Context): Outcome {
  return {
    steps: [],
    context,
    otherwise: null,
    fork: null,
    diagnostics: [],
    unread: [],
    prints: [],
    readings: [],
  };
}

export function isClean(outcome: Outcome): boolean {
  return outcome.unread.length === 0 && outcome.diagnostics.every(({ severity }) => severity !== 'error');
}

export function withTrouble(
  outcome: Outcome,
  code: string,
  range: Range,
  facts: Facts = {},
  severity: Severity = 'error',
): Outcome {
  return { ...outcome, diagnostics: [...outcome.diagnostics, diagnostic(code, range, facts, { severity })] };
}

/** First one, then the other; an `Otherwise:` at the beginning of the second joins the `If` at the end of the first. */
export function followed(first: Outcome, second: Outcome): Outcome {
  const joined: Outcome = {
    steps: [...first.steps, ...second.steps],
    context: second.context,
    otherwise: first.otherwise,
    fork: second.steps.length === 0 && second.otherwise === null ? first.fork : second.fork,
    diagnostics: [...first.diagnostics, ...second.diagnostics],
    unread: [...first.unread, ...second.unread],
    prints: [...first.prints, ...second.prints],
    readings: [...first.readings, ...second.readings],
  };
  if (second.otherwise === null) return joined;
  // An outcome without steps of its own passes the `Otherwise:` on to what comes before it.
  if (first.steps.length === 0 && first.otherwise === null) return { ...joined, otherwise: second.otherwise };
  const last = first.steps.at(-1);
  if (first.fork === null || last?.do !== 'if')
    return withTrouble(joined, 'otherwise-alone', second.otherwise.range);
  const { body, names } = second.otherwise;
  const step: IfStep = first.fork.not ? { ...last, then: body } : { ...last, otherwise: body };
  const after =
    second.steps.length > 0 ? second.context : { names: merged([first.fork.names, names]), it: null };
  return { ...joined, steps: [...first.steps.slice(0, -1), step, ...second.steps], context: after };
}

/** Where nothing comes before: an `Otherwise:` still waiting for its `If` has none. */
export function settled(outcome: Outcome): Outcome {
  if (outcome.otherwise === null) return outcome;
  return withTrouble({ ...outcome, otherwise: null }, 'otherwise-alone', outcome.otherwise.range);
}
