import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { echelonOver, inverse, isPrime, primeAbove, type Vector } from './echelon.ts';
import { nullspace } from './nullspace.ts';

const WIDTH = 7;

function pack(entries: readonly number[], p: number): Vector {
  if (p !== 2) return Int32Array.from(entries);
  return Uint32Array.of(entries.reduce((word, value, i) => (word | (value << i)) >>> 0, 0));
}

/** Rank by the textbook, on plain lists. */
function rank(vectors: readonly (readonly number[])[], p: number): number {
  return WIDTH - nullspace(vectors, WIDTH, p).length;
}

describe.each([2, 3, 13, 10007])('over the field of %i elements', (p) => {
  const vector = fc.array(fc.integer({ min: 0, max: p - 1 }), { minLength: WIDTH, maxLength: WIDTH });

  test('keeps a vector exactly when the rank grows', () => {
    fc.assert(
      fc.property(fc.array(vector, { maxLength: 12 }), (vectors) => {
        const echelon = echelonOver(p, WIDTH);
        vectors.forEach((v, i) => {
          const grew = rank(vectors.slice(0, i + 1), p) > rank(vectors.slice(0, i), p);
          expect(echelon.insert(pack(v, p))).toBe(grew);
        });
        for (const v of vectors) expect(echelon.reduces(pack(v, p))).toBe(true);
      }),
    );
  });

  test('what the null space says holds on all vectors, and is as much as the rank leaves', () => {
    fc.assert(
      fc.property(fc.array(vector, { maxLength: 12 }), (vectors) => {
        const rows = nullspace(vectors, WIDTH, p);
        for (const row of rows)
          for (const v of vectors) expect(v.reduce((sum, x, i) => (sum + x * row[i]) % p, 0)).toBe(0);
        const echelon = echelonOver(p, WIDTH);
        for (const v of vectors) echelon.insert(pack(v, p));
        expect(rows.length).toBe(WIDTH - echelon.rank);
      }),
    );
  });
});

test('inverses', () => {
  fc.assert(
    fc.property(fc.constantFrom(3, 13, 10007, 67108859), fc.nat(), (p, a) => {
      fc.pre(a % p !== 0);
      expect(Number((BigInt(inverse(a, p)) * BigInt(a % p)) % BigInt(p))).toBe(1);
    }),
  );
});

test('primes', () => {
  // The primes below 30, as every table has them.
  expect(Array.from({ length: 30 }, (_, n) => n).filter(isPrime)).toEqual([
    2, 3, 5, 7, 11, 13, 17, 19, 23, 29,
  ]);
  expect([0, 1, 2, 3, 12, 13].map(primeAbove)).toEqual([2, 2, 3, 5, 13, 17]);
});
