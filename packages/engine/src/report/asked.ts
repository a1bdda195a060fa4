import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, type Result } from '../base/result.ts';
import type { Compiled } from '../note/compile.ts';
import type { Decision } from '../proving/decision.ts';
import type { Limits } from '../proving/question.ts';
import { BudgetEnded } from '../routine/graph.ts';
import type { Routine } from '../routine/routine.ts';

/** A note that was checked, as far as further questions need it. */
export interface Asked {
  readonly text: string;
  readonly compiled: Compiled;
  /** Absent where the note was not understood. */
  readonly decision?: Decision;
}

/** A note that is understood. */
export interface Understood {
  readonly text: string;
  readonly routine: Routine;
  readonly decision: Decision;
}

/**
 * Answers a question about a note that is understood; else says that it is not, or that the work allowed was spent before there was an
 * answer.
 */
export function answered<T>(
  { text, compiled: { routine }, decision }: Asked,
  limits: Limits,
  answer: (note: Understood) => Result<T, Trouble>,
): Result<T, Trouble> {
  if (routine === undefined || decision === undefined) return bad(trouble('note-not-understood'));
  return withinLimits(limits, () => answer({ text, routine, decision }));
}

/** What work gives, or that there was too much of it. */
export function withinLimits<T>(limits: Limits, work: () => Result<T, Trouble>): Result<T, Trouble> {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof BudgetEnded)) throw error;
    return bad(trouble('budget-graph', { work: limits.work }));
  }
}
