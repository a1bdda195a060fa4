import type { Vector } from '../../base/echelon.ts';
import type { Candidate } from './candidates.ts';
import type { FreedomRow, Judged } from './row.ts';
import type { Mix } from '../altering/mix.ts';
import { opsOf, type Spot } from './spot.ts';
import { oneOf, putIn, type PutIn, type Visits } from './visits.ts';
import { after, isIdentity, wholeKey, type Whole } from '../altering/whole.ts';

/** One move of a sequence, with its mix on the piles of each location and whether it is safe by itself. */
export interface Part extends Candidate {
  readonly mixAt: (location: number) => Mix;
  readonly isSafe: boolean;
}

export interface SequencesAsked {
  readonly parts: readonly Part[];
  readonly spot: Pick<Spot, 'locations' | 'visits'>;
  /** Bits of cards that the sentences look at. */
  readonly bits: number;
  /** Judges several parts one after the other, repetitions included; null where they do not fit. */
  readonly judge: (parts: readonly Part[]) => Judged | null;
  /** Called now and then; it may throw to end it all. */
  readonly tick: () => void;
}

/**
 * Two moves one after the other that keep the sentences certain, though one of them alone would not: what the first spoils the second
 * makes good. What arrives is carried through every first move and what is needed pulled back through every second, once each;
 * a pair is then a comparison of the two.
 */
export function* safePairs({ parts, spot, judge, tick }: SequencesAsked): Generator<FreedomRow> {
  const { locations } = spot;
  const fitting = parts.flatMap((part) => {
    const puts = locations.map((location) => putInOf(part.mixAt(location)));
    return puts.every((put) => put !== null) ? [{ part, puts }] : [];
  });
  const ops = opsOf(fitting.flatMap(({ puts }) => puts.flatMap(effectsOf)));
  const visits = spot.visits(ops);
  const through = fitting.map(({ part, puts }) => {
    tick();
    const at = visits.flatMap((visit) =>
      locations.map((location, i) => ({
        visit,
        have: visit.after(location, puts[i]),
        need: visit.before(location, puts[i]),
      })),
    );
    return { part, at };
  });
  for (const first of through) {
    tick();
    for (const second of through) {
      if (first.part.isSafe && second.part.isSafe) continue;
      if (!first.at.every(({ visit, have }, i) => satisfies(visit, have, second.at[i].need))) continue;
      const judged = judge([first.part, second.part]);
      if (judged?.verdict === 'safe') yield rowOf([first.part, second.part], judged);
    }
  }
}

/**
 * Three moves that leave no choice and do what no two of them do, likewise; each result once. Where a move leaves choices, pairs say
 * more than three would.
 */
export function* safeTriples({ parts, spot, bits, judge, tick }: SequencesAsked): Generator<FreedomRow> {
  const { locations, visits } = spot;
  const singles = new Map<string, { readonly part: Part; readonly ways: readonly Whole[] }>();
  for (const part of parts) {
    const ways = locations.map((location) => part.mixAt(location).ways());
    if (!ways.every((all) => all !== null && all.length === 1)) continue;
    const only = ways.map((all) => (all ?? [])[0]);
    const key = keyOf(only, bits);
    if (!singles.has(key)) singles.set(key, { part, ways: only });
  }
  const all = [...singles.values()];
  const seen = new Set(singles.keys());
  const both = all.map((one) => all.map((two) => one.ways.map((way, i) => after(way, two.ways[i]))));
  for (const row of both) for (const ways of row) seen.add(keyOf(ways, bits));
  const found = visits(opsOf(all.flatMap(({ ways }) => ways)));
  const stands = (ways: readonly Whole[]): boolean =>
    found.every((visit) => locations.every((location, l) => visit.stands(location, ways[l])));
  const pairs = both.map((row) => row.map(stands));
  for (const [i, one] of all.entries())
    for (const [j, two] of all.entries()) {
      tick();
      for (const [k, three] of all.entries()) {
        // A safe move before or after a pair that is safe without it says nothing new.
        if ((one.part.isSafe && pairs[j][k]) || (three.part.isSafe && pairs[i][j])) continue;
        const ways = both[i][j].map((way, l) => after(way, three.ways[l]));
        if (ways.every(isIdentity)) continue;
        if (!stands(ways)) continue;
        const key = keyOf(ways, bits);
        if (seen.has(key)) continue;
        seen.add(key);
        const sequence = [one.part, two.part, three.part];
        const judged = judge(sequence);
        if (judged?.verdict === 'safe') yield rowOf(sequence, judged);
      }
    }
}

function keyOf(ways: readonly Whole[], bits: number): string {
  return ways.map((way) => wholeKey(way, bits)).join('/');
}

function putInOf(mix: Mix): PutIn | null {
  const ways = mix.ways();
  if (ways !== null) return oneOf(ways);
  const little = mix.little(mix.decision().edges);
  return typeof little === 'string' ? null : putIn(little);
}

function effectsOf({ into }: PutIn): Whole[] {
  return into.flatMap((edges) => (edges ?? []).map(({ effect }) => effect));
}

function satisfies(visit: Visits, tables: readonly Vector[], rows: readonly Vector[]): boolean {
  return rows.every((row) => tables.every((table) => visit.holds(row, table)));
}

/** The sentences of several parts as one line of a note. */
export function sayParts(parts: readonly Pick<Candidate, 'text'>[]): string {
  return `${parts.map(({ text }) => text.replace(/\.$/, '')).join('; ')}.`;
}

function rowOf(parts: readonly Part[], judged: Judged): FreedomRow {
  return {
    text: sayParts(parts),
    steps: parts.flatMap(({ steps }) => steps),
    hands: parts[0].hands,
    ...judged,
  };
}
