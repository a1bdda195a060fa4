import { trouble } from '../../base/diagnostic.ts';
import { patternOf, sayOutcome, sayWays } from '../altering/choice-words.ts';
import { MOST_LISTED, SAFE, UNSAFE, unsettled, type Judged, type WhichChoices } from './row.ts';
import type { Mix, Outcome } from '../altering/mix.ts';
import { leavesNumberOpen, narrowedTo } from '../altering/narrow.ts';
import { opsOf, type Spot } from './spot.ts';
import { oneOf } from './visits.ts';
import { isIdentity } from '../altering/whole.ts';

// Choices that are worked through one by one where a place recurs.
const MOST_ROUNDS = 80;
// More ways than this are counted in the words and listed beside them.
const MOST_NAMED = 6;

interface Way {
  readonly mix: Mix;
  readonly outcome: Outcome;
  isSafe: boolean;
}

/** Judges a mix with few ways, each by itself; null where some location has too many. */
export function judgeWays({ locations, mixAt, visits: visitsFor }: Spot): Judged | null {
  const at: { location: number; mix: Mix; ways: readonly Outcome[] }[] = [];
  for (const location of locations) {
    const mix = mixAt(location);
    const ways = mix.ways();
    if (ways === null) return null;
    at.push({ location, mix, ways });
  }
  const visits = visitsFor(opsOf(at.flatMap(({ ways }) => ways)));
  const all = new Map<string, Way>();
  for (const { location, mix, ways } of at)
    for (const outcome of ways) {
      const key = JSON.stringify(outcome.keys);
      const isSafe = visits.every((one) => one.stands(location, outcome));
      const known = all.get(key);
      if (known === undefined) all.set(key, { mix, outcome, isSafe });
      else if (!isSafe) known.isSafe = false;
    }
  let together = true;
  if (visits.some(({ recurs }) => recurs)) {
    const keeps = (keys: ReadonlySet<string>): boolean => {
      const mixes = new Map(
        at.map(({ location, ways }) => [
          location,
          oneOf(ways.filter((way) => keys.has(JSON.stringify(way.keys)))),
        ]),
      );
      return visits.every((one) => one.keeps(mixes));
    };
    const open = [...all].filter(([, { isSafe }]) => isSafe);
    if (open.length > 0 && !keeps(new Set(open.map(([key]) => key)))) {
      if (open.length > MOST_ROUNDS) return unsettled(trouble('freedom-many-rounds', { ways: open.length }));
      for (const [key, one] of open) one.isSafe = open.length > 1 && keeps(new Set([key]));
      const left = open.filter(([, { isSafe }]) => isSafe).map(([key]) => key);
      together = left.length < 2 || (left.length < open.length && keeps(new Set(left)));
    }
  }
  const ways = [...all.values()];
  const safe = ways.filter(({ isSafe }) => isSafe);
  if (safe.length === ways.length && together) return SAFE;
  // Doing nothing is no freedom.
  if (safe.every(({ outcome }) => isIdentity(outcome))) return UNSAFE;
  return {
    verdict: 'some',
    which: whichOf(
      ways,
      safe,
      together,
      at.map(({ mix }) => mix),
    ),
    reason: null,
  };
}

function whichOf(
  all: readonly Way[],
  safe: readonly Way[],
  together: boolean,
  mixes: readonly Mix[],
): WhichChoices {
  const said = ({ mix, outcome }: Way): string => sayOutcome(mix, outcome);
  const listedOnes = all.length <= MOST_LISTED ? all : [];
  const [some, every] = [numbersOf(safe), numbersOf(all)];
  const hasPattern = some !== null && every !== null && leavesNumberOpen(mixes[0].steps);
  const pattern = hasPattern ? patternOf(some, every) : null;
  const few = safe.length <= MOST_NAMED ? sayWays(safe.map(said)) : null;
  const amount = together ? (pattern?.amount ?? null) : null;
  return {
    safe: safe.length,
    of: all.length,
    words: pattern?.words ?? few ?? `${safe.length} of ${all.length} ways`,
    first: false,
    together,
    choices: listedOnes.map((way) => ({
      words: said(way),
      keys: way.outcome.keys,
      isSafe: way.isSafe,
    })),
    narrowed: amount === null || some === null ? null : narrowedTo(mixes, amount, some),
  };
}

/** The numbers chosen, ascending, where each way is the choice of one number. */
function numbersOf(ways: readonly Way[]): number[] | null {
  const found = ways.map(({ outcome: { keys } }) => (keys.length === 1 ? keys[0] : undefined));
  return found.every((key) => typeof key === 'number') ? [...found].sort((a, b) => a - b) : null;
}
