import type { Mix } from '../altering/mix.ts';
import type { Visits } from './visits.ts';
import type { Whole } from '../altering/whole.ts';

/** A place of a routine as a mix put in there meets it. */
export interface Spot {
  /** Locations that are the place. */
  readonly locations: readonly number[];
  /** The mix on the piles of a location. */
  readonly mixAt: (location: number) => Mix;
  /** The place once for each family of equations, in columns that can follow these operations on bits. */
  readonly visits: (ops: ReadonlySet<number>) => readonly Visits[];
}

/** The operations on bits that occur. */
export function opsOf(wholes: Iterable<Whole>): ReadonlySet<number> {
  const found = new Set<number>();
  for (const { ops } of wholes) if (ops !== null) for (const op of ops) if (op !== 0) found.add(op);
  return found;
}
