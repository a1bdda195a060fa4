import { cpuMs } from './clock.ts';

/** Something to be timed; what it returns is only kept so that it has to be made. */
export interface Subject {
  readonly name: string;
  readonly run: () => unknown;
}

export interface Timing {
  readonly name: string;
  /** Milliseconds of processor time for one run: the median of all turns, and the quickest turn. */
  readonly median: number;
  readonly best: number;
  /** Runs in all, after warming up. */
  readonly runs: number;
}

export interface Plan {
  /** Turns each subject gets, one after the other: A B A B ... */
  readonly turns: number;
  /** A turn repeats its subject until it has taken so long; the clock is too coarse for less. */
  readonly turnMs: number;
  /** Turns that come first and do not count. */
  readonly warmUp: number;
}

export const PLAN: Plan = { turns: 5, turnMs: 60, warmUp: 1 };

/**
 * Times subjects side by side. Each gets a turn, then each gets another, so that whatever else happens on the machine meanwhile
 * happens to all of them; ratios between them are better than the times themselves.
 */
export function measure(subjects: readonly Subject[], { turns, turnMs, warmUp }: Plan = PLAN): Timing[] {
  const taken = subjects.map((): number[] => []);
  const runs = subjects.map(() => 0);
  for (let turn = -warmUp; turn < turns; turn++)
    subjects.forEach(({ run }, i) => {
      const started = cpuMs();
      let count = 0;
      let spent = 0;
      do {
        keep(run());
        count++;
        spent = cpuMs() - started;
      } while (spent < turnMs);
      if (turn < 0) return;
      taken[i].push(spent / count);
      runs[i] += count;
    });
  return subjects.map(({ name }, i) => {
    const sorted = [...taken[i]].sort((a, b) => a - b);
    return { name, median: sorted[sorted.length >> 1], best: sorted[0], runs: runs[i] };
  });
}

let kept: unknown;
function keep(value: unknown): void {
  kept = value;
}

/** What was made last; reading it keeps the work from being left out. */
export function lastKept(): unknown {
  return kept;
}
