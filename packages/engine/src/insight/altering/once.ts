import type { EitherStep, RepeatStep, Routine, Step } from '../../routine/routine.ts';
import type { Place } from './places.ts';

/** A routine in which something happens at a place just once, though the place may come round again. */
export interface Once {
  readonly routine: Routine;
  /** False where it could not be written so, and it may happen each time the place comes round, or not at all. */
  readonly isOnce: boolean;
  /** True when it happens in every performance. */
  readonly isSure: boolean;
}

// Rounds of a fixed number that are told apart.
const MOST_ROUNDS = 40;

/**
 * The routine with steps put in before a step or at the end of a list, to be done at one of its doings only. What comes before and after
 * in a repetition is as it was, so that each round in which it can happen is a choice; of several ways the one with the place is taken.
 * Null where the place is at the end of one of several ways.
 */
export function onceAt(routine: Routine, { before, inside }: Place, steps: readonly Step[]): Once | null {
  if (before !== undefined) return onceInstead(routine, before, (step) => [...steps, step]);
  if (inside === undefined)
    return { routine: { ...routine, steps: [...routine.steps, ...steps] }, isOnce: true, isSure: true };
  return made(routine, new Change(inside, null, (step) => [step, ...steps]));
}

/** The routine with a step done otherwise at one of its doings only, likewise. */
export function onceInstead(
  routine: Routine,
  step: Step,
  otherwise: (step: Step) => readonly Step[],
): Once | null {
  return made(routine, new Change(null, step, otherwise));
}

function made(routine: Routine, change: Change): Once | null {
  const steps = change.list(routine.steps);
  if (steps === null) return null;
  const { isOnce, isSure } = change;
  return { routine: { ...routine, steps }, isOnce, isSure: isOnce && isSure };
}

class Change {
  isOnce = true;
  isSure = true;
  private readonly endOf: Step | null;
  private readonly target: Step | null;
  private readonly change: (step: Step) => readonly Step[];

  /** Either at the end of a block's list, or one step of the working. */
  constructor(endOf: Step | null, target: Step | null, change: (step: Step) => readonly Step[]) {
    this.endOf = endOf;
    this.target = target;
    this.change = change;
  }

  /** The list with the steps in it, somewhere; null where the place is not in it. */
  list(list: readonly Step[]): Step[] | null {
    for (const [i, step] of list.entries()) {
      const changed = step === this.target ? this.change(step) : this.within(step);
      if (changed !== null) return [...list.slice(0, i), ...changed, ...list.slice(i + 1)];
    }
    return null;
  }

  /** What a step becomes that has the place in it; null for every other. */
  private within(step: Step): readonly Step[] | null {
    switch (step.do) {
      case 'move':
        return null;
      case 'repeat': {
        const body = this.body(step, step.body);
        return body === null ? null : this.unrolled(step, body);
      }
      case 'each': {
        const body = this.body(step, step.body);
        if (body === null) return null;
        this.isOnce = false;
        return [{ ...step, body: this.perhaps(step.body, body) }];
      }
      case 'either': {
        for (const branch of step.branches) {
          const changed = this.list(branch);
          if (changed !== null) return changed;
        }
        return null;
      }
      case 'if': {
        const then = this.list(step.then);
        const otherwise = then === null ? this.list(step.otherwise) : null;
        if (then === null && otherwise === null) return null;
        this.isSure = false;
        return [
          { ...step, ...(then === null ? {} : { then }), ...(otherwise === null ? {} : { otherwise }) },
        ];
      }
    }
  }

  private body(step: Step, body: readonly Step[]): Step[] | null {
    if (step !== this.endOf) return this.list(body);
    const last = body[body.length - 1];
    return last === undefined ? null : [...body.slice(0, -1), ...this.change(last)];
  }

  private unrolled(step: RepeatStep, body: readonly Step[]): readonly Step[] {
    const { times } = step;
    const some = (of: RepeatStep['times']): Step => ({ ...step, times: of });
    if (times.of === 'any') return [step, ...body, step];
    if (times.of === 'at least')
      return this.oneOf(
        step,
        Array.from({ length: Math.max(1, times.n) }, (_, i) => [
          some(i === Math.max(1, times.n) - 1 ? { of: 'at least', n: i } : { of: 'exactly', n: i }),
          ...body,
          some({ of: 'at least', n: Math.max(0, times.n - 1 - i) }),
        ]),
      );
    if (typeof times.n !== 'number' || times.n < 1 || times.n > MOST_ROUNDS) {
      this.isOnce = false;
      return [{ ...step, body: this.perhaps(step.body, body) }];
    }
    const { n } = times;
    return this.oneOf(
      step,
      Array.from({ length: n }, (_, i) => [
        some({ of: 'exactly', n: i }),
        ...body,
        some({ of: 'exactly', n: n - 1 - i }),
      ]),
    );
  }

  /** Nobody chooses in which round it happens. */
  private oneOf({ number, range }: Step, branches: readonly (readonly Step[])[]): readonly Step[] {
    const either: EitherStep = { do: 'either', who: 'spectator', branches, number, range };
    return branches.length === 1 ? branches[0] : [either];
  }

  private perhaps(plain: readonly Step[], changed: readonly Step[]): readonly Step[] {
    const [first] = plain;
    const { number, range } = first ?? { number: '', range: { from: 0, to: 0 } };
    return [{ do: 'either', who: 'spectator', branches: [plain, changed], number, range }];
  }
}
