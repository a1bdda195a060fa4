import { describe, expect, test } from 'vitest';
import { Budget } from '../../src/base/budget.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { regionFrom } from '../../src/proving/region.ts';
import { Graph } from '../../src/routine/graph.ts';
import { startsOf } from '../../src/routine/starts.ts';
import { Followed } from '../../src/structures/followed.ts';
import { structuresIn } from '../../src/structures/recognise.ts';
import type { Laid } from '../published/structures.ts';
import { MIXES, TABLE } from '../published/who-keeps-what.ts';
import { laidRoutine } from './laid-routine.ts';

// The trade's table of what keeps what once more, as the engine names structures: K where it is certain at the end from every start,
// else not from some start. The table itself is enumerated beside the published structures. A key distance survives some out-faros,
// though it is often said never to. A mirror whose axis a cut leaves open, and stacks of a number of values that is no prime, are told
// where they are linear: see the conversions.
const N = 8;
const MOST_STARTS = 6;

/** By which subject and form the engine tells a structure; several where classes may be missing or all alike. */
const TOLD: Readonly<Record<string, readonly [subject: RegExp, form: string, variant: RegExp]>> = {
  'S1 alternating': [/^kind$/, 'alternating', /^$/],
  'S2 mirrored opposites': [/^kind$/, 'mirrored', /^opposite$/],
  'S2 mirrored mates': [/^kind$/, 'mirrored', /^alike$/],
  'S4 half-offset': [/^kind$/, 'half-offset', /^alike$/],
  'S5 adjacent mates': [/^kind$/, 'pairs', /^alike$/],
  'S5 opposites in pairs': [/^kind$/, 'pairs', /^opposite$/],
  'S8 block form, k=4': [/^kind$/, 'blocks', /^4$/],
  'S8 exact period 4': [/^kind$/, 'repeating', /^4$/],
  'S6 face-class parity': [/^kind with facing$/, 'alternating', /^$/],
  'S7 class shown by face': [/^kind with facing$/, 'all-alike', /^$/],
  'S12 key distance': [/k1.* and .*k2|k2.* and .*k1/, 'key-distance', /./],
  'S11 parity of a place': [/^card .*k1/, 'residue', /^2 /],
  'S10 odd = even face-ups': [/^count up$/, 'odd-as-even', /^$/],
  'face-up count (not n/2)': [/^count up$/, 'counted', /^$/],
  'S25 one end differs': [/^ends but for the "\d"$/, 'one-end', /^$/],
};

/** Starts whose classes, faces and ends are such that the structure can be spoken of at all. */
function speakable(name: string, starts: readonly (readonly Laid[])[]): (readonly Laid[])[] {
  const classes = (start: readonly Laid[]): number => new Set(start.map(({ x }) => x)).size;
  const ups = (start: readonly Laid[]): number => start.filter(({ up }) => up === 1).length;
  const fits = starts.filter((start) => {
    if (/^S[67] /.test(name)) return classes(start) === 2 && ups(start) > 0 && ups(start) < N;
    return /^(S10|face-up)/.test(name) ? ups(start) > 0 && ups(start) < N : classes(start) > 1;
  });
  const step = Math.max(1, Math.floor(fits.length / MOST_STARTS));
  return fits.filter((_, i) => i % step === 0).slice(0, MOST_STARTS);
}

const worked = new Map(
  Object.entries(MIXES).map(([name, mix]) => {
    const blank = Array.from({ length: N }, (_, x) => ({ x, up: 0, end: 0 }));
    const graph = new Graph(laidRoutine(blank, mix));
    return [name, { mix, graph, region: regionFrom(graph, [graph.start], new Budget(Infinity)) }] as const;
  }),
);

/** What the engine says of one structure after a mix, from one start. */
function toldAfter(mixName: string, name: string, start: readonly Laid[]): string[] {
  const found = worked.get(mixName);
  if (found === undefined) throw new Error(mixName);
  const { mix, graph, region } = found;
  const starts = startsOf(laidRoutine(start, mix));
  const followed = new Followed({ graph, region, starts }, DEFAULT_LIMITS);
  const [subject, form, variant] = TOLD[name];
  const [end] = region.exits;
  expect(region.exits).toHaveLength(1);
  return followed.subjects
    .filter(({ id }) => subject.test(id))
    .flatMap((one) => {
      const vectors = followed.vectorsAt(end, one);
      return vectors === null ? [] : structuresIn(vectors, graph.locations[end].layout, one);
    })
    .filter((one) => one.form === form && variant.test(one.variant))
    .map(({ form: id, variant: key, value }) => `${id} ${key} ${value}`);
}

/** The same before any mix: whether it is kept is whether it is told again. */
function toldAtFirst(name: string, start: readonly Laid[]): string[] {
  const routine = laidRoutine(start, ['Cut the packet at 0.']);
  const graph = new Graph(routine);
  const region = regionFrom(graph, [graph.start], new Budget(Infinity));
  const followed = new Followed({ graph, region, starts: startsOf(routine) }, DEFAULT_LIMITS);
  const [subject, form, variant] = TOLD[name];
  return followed.subjects
    .filter(({ id }) => subject.test(id))
    .flatMap((one) =>
      structuresIn(followed.vectorsAt(graph.start, one) ?? fail(), graph.locations[graph.start].layout, one),
    )
    .filter((one) => one.form === form && variant.test(one.variant))
    .map(({ form: id, variant: key, value }) => `${id} ${key} ${value}`);
}

function fail(): never {
  throw new Error('what is followed is known everywhere');
}

describe.each(
  TABLE.filter(([{ name }]) => name in TOLD).map(
    ([structure, row]) => [structure.name, structure, row] as const,
  ),
)('%s', (name, structure, row) => {
  const starts = speakable(name, structure.starts(N));
  test('is told at the start', () => {
    expect(starts.length).toBeGreaterThan(0);
    for (const start of starts) expect(toldAtFirst(name, start).length).toBeGreaterThan(0);
  });
  test('is told after just those mixes that keep it', { timeout: 60_000 }, () => {
    const marks = row.split(' ');
    const said = Object.keys(MIXES).map((mix) => {
      // Whatever was true at first and is told again, by the same number or step.
      const isKept = starts.every((start) => {
        const before = toldAtFirst(name, start);
        return toldAfter(mix, name, start).some((one) => before.includes(one));
      });
      return `${mix}: ${isKept ? 'K' : 'not'}`;
    });
    expect(said).toEqual(Object.keys(MIXES).map((mix, i) => `${mix}: ${marks[i] === 'K' ? 'K' : 'not'}`));
  });
});
