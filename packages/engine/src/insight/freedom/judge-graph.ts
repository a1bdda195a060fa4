import { trouble } from '../../base/diagnostic.ts';
import type { Key } from '../../moves/move.ts';
import { listed, patternOf } from '../altering/choice-words.ts';
import { MOST_LISTED, SAFE, UNSAFE, unsettled, type Judged } from './row.ts';
import type { LittleGraph } from '../altering/mix.ts';
import { opsOf, type Spot } from './spot.ts';
import { putIn } from './visits.ts';
import { isIdentity } from '../altering/whole.ts';

// First choices of a large mix that are told apart when they are not safe together, and those that are named.
const MOST_FIRSTS = 110;
const MOST_NAMED = 6;

/** What is known of a mix that begins with some of its options. */
type Kept = boolean | 'does not fit' | 'too large to tell';

/** Judges a mix with too many ways to list, decision by decision; null where it does not fit. */
export function judgeGraph(spot: Spot): Judged | null {
  const { locations, mixAt, visits } = spot;
  const first = new Map<string, { readonly words: string; readonly keys: readonly Key[]; isSafe: boolean }>();
  for (const location of locations) {
    const mix = mixAt(location);
    for (const edge of mix.decision().edges) {
      const key = JSON.stringify(edge.key);
      let one = first.get(key);
      if (one === undefined)
        first.set(key, (one = { words: String(edge.key), keys: [edge.key], isSafe: true }));
      if (!one.isSafe) continue;
      for (const way of mix.samples(edge)) {
        if (way === null) return null;
        if (visits(opsOf([way])).every((visit) => visit.stands(location, way))) continue;
        one.isSafe = false;
        break;
      }
    }
  }
  const open = [...first].filter(([, { isSafe }]) => isSafe);
  if (open.length === 0) return UNSAFE;
  const all = keepsFrom(spot, new Set(open.map(([key]) => key)));
  if (typeof all === 'string') return unclear(all);
  if (all && open.length === first.size) return SAFE;
  if (!all) {
    if (open.length > MOST_FIRSTS) return unsettled(trouble('freedom-mix-too-large'));
    for (const [key, one] of open) {
      const keeps = keepsFrom(spot, new Set([key]));
      if (typeof keeps === 'string') return unclear(keeps);
      one.isSafe = keeps;
    }
  }
  const safe = [...first].filter(([, { isSafe }]) => isSafe);
  if (safe.every(([key]) => doesNothing(spot, key))) return UNSAFE;
  const keys = new Set(safe.map(([key]) => key));
  const which = {
    safe: safe.length,
    of: first.size,
    words: sayFirsts(
      safe.map(([, one]) => one),
      [...first.values()],
    ),
    first: true,
    together: all || safe.length === 1 || keepsFrom(spot, keys) === true,
    choices: [...first.values()].slice(0, MOST_LISTED),
    narrowed: null,
  };
  return { verdict: 'some', which, reason: null };
}

type First = { readonly words: string; readonly keys: readonly Key[] };

function sayFirsts(safe: readonly First[], all: readonly First[]): string {
  if (safe.length <= MOST_NAMED) return `${listed(safe.map(({ words }) => words))} first`;
  const [some, every] = [safe, all].map((ones) =>
    ones.flatMap(({ keys: [key] }) => (typeof key === 'number' ? [key] : [])),
  );
  if (some.length < safe.length || every.length < all.length)
    return `${safe.length} of ${all.length} first choices`;
  const ascending = (a: number, b: number): number => a - b;
  return `${patternOf([...some].sort(ascending), [...every].sort(ascending)).words} at first`;
}

function unclear(why: Exclude<Kept, boolean>): Judged | null {
  return why === 'does not fit' ? null : unsettled(trouble('freedom-mix-too-large'));
}

/** Whether a mix keeps the sentences when it begins with one of these options. */
function keepsFrom({ locations, mixAt, visits }: Spot, keys: ReadonlySet<string>): Kept {
  const littles = new Map<number, LittleGraph>();
  for (const location of locations) {
    const mix = mixAt(location);
    const firsts = mix.decision().edges.filter(({ key }) => keys.has(JSON.stringify(key)));
    // With other sizes this option may not be there.
    if (firsts.length === 0) continue;
    const little = mix.little(firsts);
    if (typeof little === 'string') return little;
    littles.set(location, little);
  }
  const edges = [...littles.values()].flatMap((little) => little.edges);
  const mixes = new Map([...littles].map(([location, little]) => [location, putIn(little)]));
  return visits(opsOf(edges.map(({ effect }) => effect))).every((one) => one.keeps(mixes));
}

/** As far as the ways tried tell: doing nothing is no freedom worth a line. */
function doesNothing({ locations, mixAt }: Spot, key: string): boolean {
  return locations.every((location) => {
    const mix = mixAt(location);
    return mix
      .decision()
      .edges.filter((edge) => JSON.stringify(edge.key) === key)
      .every((edge) => [...mix.samples(edge)].every((way) => way !== null && isIdentity(way)));
  });
}
