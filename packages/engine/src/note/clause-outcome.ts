import { diagnostic, type Range } from '../base/diagnostic.ts';
import type { Chooser, Step } from '../routine/routine.ts';
import { stepOf, type Clause, type Context } from './clause.ts';
import type { Line, Span } from './line.ts';
import { merged } from './names.ts';
import { nothing, type Outcome } from './outcome.ts';
import { printClause } from './print-clause.ts';

/** Who does a step, where it is a move. */
export function chooserOf(step: Step | undefined): Chooser | null {
  return step?.do === 'move' ? step.who : null;
}

/** A sentence that is not understood, kept with its place. */
export function unreadOutcome(line: Line, span: Span, context: Context): Outcome {
  const unread = { of: 'working' as const, line, span, context };
  return { ...nothing({ names: context.names, it: null }), unread: [unread] };
}

/**
 * A clause as a step; one that may be left out is a choice between it and nothing. `context` is the one before it, `who` the one
 * who chooses where nothing is said.
 */
export function clauseOutcome(clause: Clause, range: Range, context: Context, who: Chooser): Outcome {
  const step = stepOf(clause, range);
  const steps: Step[] = clause.may
    ? [{ do: 'either', who: clause.who, branches: [[step], []], number: '', range }]
    : [step];
  const diagnostics = clause.troubles.map((t) =>
    diagnostic(t.trouble.code, t.range ?? range, t.trouble.facts),
  );
  if (clause.rivals.length > 0) {
    const facts = { moves: [clause.move, ...clause.rivals].map((move) => move.title) };
    diagnostics.push(diagnostic('read-two-ways', range, facts));
  }
  const after = clause.may
    ? { ...clause.after, names: merged([clause.after.names, context.names]) }
    : clause.after;
  return {
    ...nothing(after),
    steps,
    diagnostics,
    prints: diagnostics.length > 0 ? [] : [{ range, say: () => printClause(clause, who) }],
    readings: clause.readings.map((reading) => ({ range, reading })),
  };
}
