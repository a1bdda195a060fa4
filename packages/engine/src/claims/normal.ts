import type { Card } from '../cards/card.ts';
import { profileOf } from './bounds.ts';
import type { Measure } from './formula.ts';

/** A measure as everybody writes it: `flipped` when it reads 1 where the normal one reads 0; null reads 0 everywhere. */
export interface Normal {
  readonly measure: Measure | null;
  readonly flipped: boolean;
}

interface Known {
  readonly normals: Map<string, Normal>;
  /** The first measure met of those that read alike stands for all of them. */
  readonly byProfile: Map<string, Measure>;
}

const plain = new WeakMap<readonly Card[], Known>();
const modulo2 = new WeakMap<readonly Card[], Known>();

/** One measure for all that read alike on these cards, and one for a 0/1 measure and its opposite. */
export function normal(measure: Measure, cards: readonly Card[]): Normal {
  return find(plain, measure, cards, (value) => value);
}

/** The same where only odd and even matter. */
export function normalModulo2(measure: Measure, cards: readonly Card[]): Normal {
  return find(modulo2, measure, cards, (value) => value & 1);
}

function find(
  memory: WeakMap<readonly Card[], Known>,
  measure: Measure,
  cards: readonly Card[],
  taken: (value: number) => number,
): Normal {
  let known = memory.get(cards);
  if (known === undefined) memory.set(cards, (known = { normals: new Map(), byProfile: new Map() }));
  let found = known.normals.get(measure.id);
  if (found === undefined) {
    found = make(measure, cards, taken, known.byProfile);
    known.normals.set(measure.id, found);
  }
  return found;
}

function make(
  measure: Measure,
  cards: readonly Card[],
  taken: (value: number) => number,
  byProfile: Map<string, Measure>,
): Normal {
  const sorted = { ...measure, bits: [...measure.bits].sort() };
  const profile = profileOf(sorted, cards).map(taken);
  const isBinary = profile.every((value) => value === 0 || value === 1);
  const flipped = isBinary && profile[0] === 1;
  const shown = flipped ? profile.map((value) => 1 - value) : profile;
  if (shown.every((value) => value === 0)) return { measure: null, flipped };
  const key = `${sorted.bits.join()}:${shown.join()}`;
  let normalOne = byProfile.get(key);
  if (normalOne === undefined) byProfile.set(key, (normalOne = flipped ? opposite(measure, taken) : measure));
  return { measure: normalOne, flipped };
}

function opposite(measure: Measure, taken: (value: number) => number): Measure {
  return { ...measure, id: `not (${measure.id})`, of: (card, bit) => 1 - taken(measure.of(card, bit)) };
}
