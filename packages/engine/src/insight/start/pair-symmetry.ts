import type { CardClass } from './card-class.ts';
import { constantOf, slotsOf, type StartLine } from './start-need.ts';

/** A class as the vector of what the members of all families read on it, over the field of two elements. */
type Bits = string;

// More offsets than this and cards are not told apart by them any more cheaply.
const MOST_OFFSETS = 16;

/**
 * Where equations only tie cards two by two (mirror pairs agree in value, say), classes may change places as long as those that are
 * tied stay so: what is left of the classes is then named in the same way however they are called. Null where equations are of
 * another make.
 */
export function pairSymmetry(
  lines: readonly StartLine[],
  bits: readonly number[],
  classes: readonly CardClass[],
): ((left: readonly number[]) => string) | null {
  if (lines.length === 0 || lines.some(({ problem: { p, d } }) => p !== 2 || d !== 1)) return null;
  const rows = new Map<readonly number[], StartLine[]>();
  for (const line of lines) {
    const known = rows.get(line.row);
    if (known === undefined) rows.set(line.row, [line]);
    else known.push(line);
  }
  if (lines.some((line) => slotsOf(line).length !== 2)) return null;
  const problems = [...new Set(lines.map(({ problem }) => problem))];
  const members = problems.flatMap((problem) => problem.members);
  const slots = bits.map((_, slot) => slot);
  const vectors = slots.map((slot) =>
    classes.map(({ cards: [card] }) =>
      members.map(({ space }) => space.valuesOf(card, bits[slot])[0]).join(''),
    ),
  );
  // How a card lies in a slot must change what is read on all cards alike.
  const turned = vectors.map((at) => added(at[0], vectors[0][0]));
  if (vectors.some((at, slot) => at.some((one, c) => added(one, vectors[0][c]) !== turned[slot])))
    return null;

  const ties = new Map<string, Map<number, Bits>>();
  for (const [, own] of rows) {
    const [a, b] = slotsOf(own[0]);
    const key = `${a} ${b}`;
    const at = problems.indexOf(own[0].problem);
    const known = ties.get(key) ?? new Map<number, Bits>();
    ties.set(key, known.set(at, own.map((line) => String(constantOf(line))).join('')));
  }
  const offsets = new Set<Bits>(['0'.repeat(members.length)]);
  for (const [key, parts] of ties) {
    // A pair that only some families tie is bound in part.
    if (parts.size < problems.length) return null;
    const [a, b] = key.split(' ').map(Number);
    const total = problems.map((_, i) => parts.get(i) ?? '').join('');
    const offset = added(total, added(turned[a], turned[b]));
    for (const one of offsets) {
      offsets.add(added(one, offset));
      if (offsets.size > MOST_OFFSETS) return null;
    }
  }
  const byVector = new Map(vectors[0].map((vector, c) => [vector, c]));
  const shifts = [...offsets];
  const done = new Set<Bits>();
  const cosets: (readonly number[])[] = [];
  for (const vector of byVector.keys()) {
    if (done.has(vector)) continue;
    const coset = shifts.map((shift) => added(vector, shift));
    coset.forEach((one) => done.add(one));
    cosets.push(coset.map((one) => byVector.get(one) ?? -1));
  }
  // Moving all of a coset by an offset moves the place at which its list begins.
  const moves = shifts.map((by) => shifts.map((shift) => shifts.indexOf(added(shift, by))));
  return (left) =>
    cosets
      .map((coset) => {
        const counts = coset.map((c) => (c < 0 ? 0 : left[c]));
        return moves.map((move) => move.map((i) => counts[i]).join()).reduce((a, b) => (b < a ? b : a));
      })
      .sort()
      .join('/');
}

function added(a: Bits, b: Bits): Bits {
  let sum = '';
  for (let i = 0; i < a.length; i++) sum += a[i] === b[i] ? '0' : '1';
  return sum;
}
