import { decide } from '../../proving/decide.ts';
import type { Decision } from '../../proving/decision.ts';
import type { Limits } from '../../proving/question.ts';
import { BudgetEnded } from '../../routine/graph.ts';
import type { Ending, MoveStep, Routine } from '../../routine/routine.ts';
import type { Found } from '../../structures/found.ts';
import { alsoCertain } from '../likeness/also.ts';
import { onceAt } from '../altering/once.ts';
import type { Place } from '../altering/places.ts';
import { contraryTo, strongest, weakerThan } from './weaker.ts';

/** What is still certain once something has happened that the note does not say. */
export interface After {
  /** The routine with the mishap in it, decided. */
  readonly decision: Decision;
  /** False where the mishap may happen each time round, since it could not be told to happen once. */
  readonly isOnce: boolean;
  /** Endings that say less than those that may fail now, and are certain. */
  readonly weaker: readonly Ending[];
  /** Endings that say the contrary, and are certain. */
  readonly contrary: readonly Ending[];
  /** What is certain besides and no sentence claims. */
  readonly also: readonly Found[];
}

// A weaker ending is worth a short search only.
const MOST_TABLES = 20_000;

/** Null where nothing can be put in at the place. */
export function afterMishap(
  routine: Routine,
  place: Place,
  steps: readonly MoveStep[],
  limits: Limits,
): After | null {
  const once = onceAt(routine, place, steps);
  if (once === null) return null;
  const decision = decide(once.routine, limits);
  const lost = decision.sentences.filter(({ verdict }) => verdict !== 'proved');
  const asked = lost.map(({ ending }) => ending).filter(({ chance }) => chance === undefined);
  const fewer: Limits = { ...limits, states: Math.min(limits.states, MOST_TABLES), trials: 0 };
  const known = new Set(decision.sentences.map(({ ending }) => ending.text));
  const certain = (endings: readonly Ending[]): Ending[] => {
    const open = endings.filter(({ text }) => !known.has(text) && known.add(text));
    if (open.length === 0) return [];
    return decide({ ...once.routine, endings: open }, fewer)
      .sentences.filter(({ verdict }) => verdict === 'proved')
      .map(({ ending }) => ending);
  };
  const less = asked.flatMap((ending) => weakerThan(ending, routine.cards));
  const held = new Set([
    ...certain(less.map(({ ending }) => ending)).map(({ text }) => text),
    ...decision.sentences.filter(({ verdict }) => verdict === 'proved').map(({ ending }) => ending.text),
  ]);
  const weaker = strongest(less, (text) => held.has(text));
  const contrary = certain(asked.flatMap(contraryTo));
  return { decision, isOnce: once.isOnce, weaker, contrary, also: also(decision, limits) };
}

function also(decision: Decision, limits: Limits): readonly Found[] {
  try {
    return alsoCertain(decision, limits);
  } catch (error) {
    if (error instanceof BudgetEnded) return [];
    throw error;
  }
}
