import type { VersionRecord } from './records.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** A text that is being replaced becomes a version when the newest one is at least this much older. */
export const APART = 2 * MINUTE;

/** How many automatic versions of one note stay at most, whatever their age. */
export const MOST = 300;

/** Up to which age one version is kept of each stretch of time. */
const RULES: readonly { readonly upTo: number; readonly width: number }[] = [
  { upTo: HOUR, width: 1 },
  { upTo: DAY, width: 30 * MINUTE },
  { upTo: 7 * DAY, width: 2 * HOUR },
  { upTo: 90 * DAY, width: DAY },
  { upTo: Infinity, width: 7 * DAY },
];

/**
 * The keys of the automatic versions that may go. The younger the history, the finer it is kept; what a person named, and
 * what a conflict left behind, always stays.
 */
export function thinned(versions: readonly VersionRecord[], now: number): readonly number[] {
  const gone: number[] = [];
  const taken = new Set<string>();
  let kept = 0;
  for (const { key, made } of versions
    .filter(({ kind }) => kind === 'automatic')
    .toSorted((a, b) => b.made - a.made)) {
    const { width } = RULES.find(({ upTo }) => now - made < upTo)!;
    const stretch = `${width} ${Math.floor(made / width)}`;
    if (taken.has(stretch) || kept >= MOST) gone.push(key);
    else {
      taken.add(stretch);
      kept += 1;
    }
  }
  return gone;
}
