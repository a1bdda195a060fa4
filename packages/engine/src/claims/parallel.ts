import { Echelon2, type Vector } from '../base/echelon.ts';
import { nullspace } from '../base/nullspace.ts';
import type { Card } from '../cards/card.ts';
import { and, or, type Formula } from './formula.ts';
import { formulaOf, opposed, parityOf, sumOf, type Parity } from './parity.ts';

// Entries of all equations together; more would cost more time here than the search it saves.
const MOST_ENTRIES = 40_000;

/**
 * An `or` of conjunctions over GF(2) that differ in their constants only is one conjunction when the constants that occur are
 * all there could be between them: "all red cards one way up, the black ones the other" is face-up red or face-up black. This is
 * what most sentences `up to turning the packet over` come to. Null when the parts are not of that kind.
 */
export function unionOf(parts: readonly Formula[], cards: readonly Card[]): Formula | null {
  const lists: Parity[][] = [];
  let entries = 0;
  for (const part of parts) {
    const list: Parity[] = [];
    for (const one of part.is === 'and' ? part.parts : [part]) {
      const parity = parityOf(one, cards);
      if (parity === null) return null;
      list.push(parity);
      entries += parity.entries.size;
    }
    lists.push(list);
  }
  if (entries > MOST_ENTRIES) return null;
  const index = new Map<string, number>();
  for (const list of lists)
    for (const { entries: all } of list)
      for (const key of all.keys()) if (!index.has(key)) index.set(key, index.size);
  const spaces = lists.map((list) => new Space(list, index)).filter((space) => !space.isEmpty);
  if (spaces.length === 0) return or([]);
  const [first] = spaces;
  const differences = new Map<string, number[]>();
  for (const space of spaces) {
    const difference = first.differenceTo(space);
    if (difference === null) return null;
    differences.set(difference.join(''), difference);
  }
  const { basis } = first;
  const kept = nullspace([...differences.values()], basis.length, 2);
  // Closed under addition, the differences are 2^(what is lost) many; fewer, and the union is no conjunction.
  if (differences.size !== 2 ** (basis.length - kept.length)) return null;
  return and(
    kept.map((row) =>
      formulaOf(basis.filter((_, i) => row[i] === 1).reduce(sumOf, { entries: new Map(), odd: 0 })),
    ),
  );
}

/** The tables that satisfy some parities, as independent equations. */
class Space {
  readonly basis: Parity[] = [];
  isEmpty = false;
  private readonly echelon: Echelon2;
  private readonly index: ReadonlyMap<string, number>;

  constructor(list: readonly Parity[], index: ReadonlyMap<string, number>) {
    this.index = index;
    this.echelon = new Echelon2(index.size + 1);
    for (const parity of list) {
      const rest = this.reduced(parity);
      if (!rest.hasEntries) {
        if (rest.odd === 1) this.isEmpty = true;
      } else if (this.echelon.insert(this.vector(parity))) this.basis.push(parity);
    }
  }

  /** For each equation of the basis, 1 when the other space demands its opposite; null when it demands neither. */
  differenceTo(other: Space): number[] | null {
    if (other.basis.length !== this.basis.length) return null;
    const difference: number[] = [];
    for (const parity of this.basis) {
      const rest = other.reduced(parity);
      if (rest.hasEntries) return null;
      difference.push(rest.odd);
    }
    return difference;
  }

  /** What is left of an equation given those kept; the constant stands last, so that it is never cleared by itself. */
  private reduced(parity: Parity): { hasEntries: boolean; odd: number } {
    for (const [odd, asked] of [
      [0, parity],
      [1, opposed(parity)],
    ] as const)
      if (this.echelon.reduces(this.vector(asked))) return { hasEntries: false, odd };
    return { hasEntries: true, odd: 0 };
  }

  private vector(parity: Parity): Vector {
    const last = this.index.size;
    const vector = new Uint32Array((last + 32) >>> 5);
    const set = (i: number): void => {
      vector[i >>> 5] |= 1 << (i & 31);
    };
    for (const key of parity.entries.keys()) set(this.index.get(key) as number);
    if (parity.odd === 1) set(last);
    return vector;
  }
}
