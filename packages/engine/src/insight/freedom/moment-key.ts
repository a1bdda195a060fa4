import { sha256 } from '@noble/hashes/sha2';
import { bytesToHex } from '@noble/hashes/utils';
import { inverse, type Vector } from '../../base/echelon.ts';
import type { Edge } from '../../routine/graph.ts';
import type { Family } from '../altering/probed.ts';
import { ALL_OPS } from '../altering/spaces.ts';

/** What a place looks like to one family of equations; two that are alike in all of it allow just the same mixes. */
export interface Moment {
  readonly family: Family;
  readonly locations: readonly number[];
  readonly arriving: (location: number) => readonly Vector[];
  readonly leaving: (location: number) => readonly Vector[];
  /** Edges between two visits of the place. */
  readonly between: Iterable<Edge>;
}

/** A text that is the same for moments that are alike: SHA-256 of the spaces in a form that does not depend on their bases. */
export function momentKey({ family, locations, arriving, leaving, between }: Moment): string {
  const { problem } = family;
  const hash = sha256.create();
  const add = (numbers: ArrayLike<number>): void => {
    hash.update(new Uint8Array(Uint32Array.of(numbers.length, ...Array.from(numbers)).buffer));
  };
  add([problem.p, problem.d, problem.m, problem.width, locations.length]);
  for (const member of problem.members)
    for (const op of ALL_OPS) {
      const { space } = member;
      if (!space.isClosedUnder(op)) add([]);
      else for (const { columns, constant } of space.under(op)) add([op, ...columns, constant]);
    }
  // Locations are called by the order in which they come up.
  const names = new Map<number, number>();
  const nameOf = (id: number): number => {
    let name = names.get(id);
    if (name === undefined) names.set(id, (name = names.size));
    return name;
  };
  for (const location of locations) {
    add([nameOf(location)]);
    for (const row of reduced(family, arriving(location))) add(row);
    add([]);
    for (const row of reduced(family, leaving(location))) add(row);
    add([]);
  }
  for (const { from, to, effect } of between) {
    add([nameOf(from), nameOf(to)]);
    add(effect.from);
    add(effect.ops ?? []);
  }
  return bytesToHex(hash.digest());
}

/** The reduced echelon form of a span, which is the same for all its bases. */
function reduced({ problem, kernel }: Family, vectors: readonly Vector[]): Vector[] {
  const { p, width } = problem;
  const rows: { readonly at: number; readonly row: Vector }[] = [];
  for (const vector of vectors) {
    const row = vector.slice();
    for (const known of rows) cancel(row, known.row, kernel.entry(row, known.at), p);
    let at = 0;
    while (at < width && kernel.entry(row, at) === 0) at++;
    if (at === width) continue;
    if (p !== 2) {
      const scale = inverse(row[at], p);
      for (let k = 0; k < row.length; k++) row[k] = (row[k] * scale) % p;
    }
    for (const known of rows) cancel(known.row, row, kernel.entry(known.row, at), p);
    rows.push({ at, row });
  }
  return rows.sort((a, b) => a.at - b.at).map(({ row }) => row);
}

function cancel(row: Vector, other: Vector, times: number, p: number): void {
  if (times === 0) return;
  if (p === 2) for (let k = 0; k < row.length; k++) row[k] ^= other[k];
  else for (let k = 0; k < row.length; k++) row[k] = (row[k] + (p - times) * other[k]) % p;
}
