/**
 * Linear independence over a prime field, exact. A vector is `width` entries; over GF(2) they are packed 32 to a word.
 * `insert` reduces the vector given (destroying it) and keeps it when it is independent of those kept before.
 */
export interface Echelon {
  readonly rank: number;
  insert(vector: Vector): boolean;
  /** Reduces in place; true when nothing is left, that is when the vector lies in the span. */
  reduces(vector: Vector): boolean;
  /** A kept row, by its number in order of keeping. */
  row(i: number): Vector;
}

export type Vector = Uint32Array | Int32Array;

export function echelonOver(p: number, width: number): Echelon {
  return p === 2 ? new Echelon2(width) : new EchelonP(p, width);
}

export class Echelon2 implements Echelon {
  rank = 0;
  private readonly words: number;
  /** Kept rows in the order of keeping. */
  private rows: Uint32Array;
  /** For each entry, one more than the number of the row that begins there; 0 for none. */
  private readonly rowAt: Int32Array;

  constructor(width: number) {
    this.words = (width + 31) >>> 5;
    // One piece for most bases: there may be thousands, and pieces cost more than room.
    this.rows = new Uint32Array(this.words * (this.words <= 8 ? 32 : 4));
    this.rowAt = new Int32Array(this.words * 32);
  }

  insert(vector: Vector): boolean {
    const pivot = this.reduce(vector);
    if (pivot < 0) return false;
    const { words } = this;
    const at = this.rank * words;
    if (at === this.rows.length) {
      const rows = new Uint32Array(this.rows.length * 2);
      rows.set(this.rows);
      this.rows = rows;
    }
    for (let k = 0; k < words; k++) this.rows[at + k] = vector[k];
    this.rowAt[pivot] = ++this.rank;
    return true;
  }

  reduces(vector: Vector): boolean {
    return this.reduce(vector) < 0;
  }

  row(i: number): Vector {
    return this.rows.slice(i * this.words, (i + 1) * this.words);
  }

  /** Clears leading entries while a kept row begins there; returns the first that stays, or -1. */
  private reduce(vector: Vector): number {
    const { words, rows, rowAt } = this;
    for (let w = 0; w < words; w++) {
      let word = vector[w] | 0;
      while (word !== 0) {
        const pivot = (w << 5) + 31 - Math.clz32(word & -word);
        const row = rowAt[pivot];
        if (row === 0) return pivot;
        const at = (row - 1) * words;
        word ^= rows[at + w];
        vector[w] = word;
        for (let k = w + 1; k < words; k++) vector[k] ^= rows[at + k];
      }
    }
    return -1;
  }
}

export class EchelonP implements Echelon {
  rank = 0;
  private readonly p: number;
  private readonly width: number;
  private rows: Int32Array;
  private readonly pivots: Int32Array;

  constructor(p: number, width: number) {
    this.p = p;
    this.width = width;
    this.rows = new Int32Array(width * 4);
    this.pivots = new Int32Array(width).fill(-1);
  }

  insert(vector: Vector): boolean {
    const pivot = this.reduce(vector);
    if (pivot < 0) return false;
    const { width, p } = this;
    if ((this.rank + 1) * width > this.rows.length) {
      const rows = new Int32Array(this.rows.length * 2);
      rows.set(this.rows);
      this.rows = rows;
    }
    const scale = inverse(vector[pivot], p);
    const at = this.rank * width;
    for (let k = pivot; k < width; k++) this.rows[at + k] = (vector[k] * scale) % p;
    this.pivots[pivot] = this.rank++;
    return true;
  }

  reduces(vector: Vector): boolean {
    return this.reduce(vector) < 0;
  }

  row(i: number): Vector {
    return this.rows.slice(i * this.width, (i + 1) * this.width);
  }

  private reduce(vector: Vector): number {
    const { width, p, rows, pivots } = this;
    for (let k = 0; k < width; k++) {
      if (vector[k] === 0) continue;
      const row = pivots[k];
      if (row < 0) return k;
      const at = row * width;
      const times = p - vector[k];
      // Below 2^26 the products stay exact in double precision.
      for (let j = k; j < width; j++) vector[j] = (vector[j] + times * rows[at + j]) % p;
    }
    return -1;
  }
}

/** Largest prime the arithmetic above is exact for; products stay below 2^53. */
export const MOST_PRIME = 2 ** 26;

/** Inverse modulo a prime by the extended Euclidean algorithm; `a` must not be 0 modulo p. */
export function inverse(a: number, p: number): number {
  let [r0, r1, s0, s1] = [p, ((a % p) + p) % p, 0, 1];
  while (r1 !== 0) {
    const q = Math.floor(r0 / r1);
    [r0, r1] = [r1, r0 - q * r1];
    [s0, s1] = [s1, s0 - q * s1];
  }
  return ((s0 % p) + p) % p;
}

export function isPrime(n: number): boolean {
  if (n < 2) return false;
  for (let k = 2; k * k <= n; k++) if (n % k === 0) return false;
  return true;
}

/** The least prime greater than n. */
export function primeAbove(n: number): number {
  let p = Math.max(2, Math.floor(n) + 1);
  while (!isPrime(p)) p++;
  return p;
}
