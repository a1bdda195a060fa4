import type { EitherStep, RepeatStep, Routine, Step } from '../routine/routine.ts';
import type { Place } from './places.ts';

/** A routine in which something happens at a place just once, though the place may come round again. */
export interface Once {
  readonly routine: Routine;
  /** False where it could not be written so, and it may happen each time the place comes round, or not at all. */
  readonly isOnce: boolean;
}

// Rounds of a fixed number that are told apart.
const MOST_ROUNDS = 40;

/**
 * The routine with steps put in before a step or at the end, to be done at one of its doings only. What comes before and after in a
 * repetition is as it was, so that each round in which it can happen is a choice; of several ways the one with the place is taken. Null
 * where the place is none of these.
 */
export function onceAt(routine: Routine, { before, inside }: Place, steps: readonly Step[]): Once | null {
  const into = new Insertion(before, inside, steps);
  if (before === undefined && inside === undefined)
    return { routine: { ...routine, steps: [...routine.steps, ...steps] }, isOnce: true };
  const made = into.list(routine.steps);
  return made === null ? null : { routine: { ...routine, steps: made }, isOnce: into.isOnce };
}

class Insertion {
  isOnce = true;
  private readonly before: Step | undefined;
  private readonly inside: Step | undefined;
  private readonly steps: readonly Step[];

  constructor(before: Step | undefined, inside: Step | undefined, steps: readonly Step[]) {
    this.before = before;
    this.inside = inside;
    this.steps = steps;
  }

  /** The list with the steps in it, somewhere; null where the place is not in it. */
  list(list: readonly Step[]): Step[] | null {
    for (const [i, step] of list.entries()) {
      const changed = step === this.before ? [...this.steps, step] : this.within(step);
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
        if (then !== null) return [{ ...step, then }];
        const otherwise = this.list(step.otherwise);
        return otherwise === null ? null : [{ ...step, otherwise }];
      }
    }
  }

  private body(step: Step, body: readonly Step[]): Step[] | null {
    if (this.before === undefined && step === this.inside) return [...body, ...this.steps];
    return this.list(body);
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
