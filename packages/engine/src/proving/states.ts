/**
 * The set of (location, table) pairs an exact search has met. A table is one code a slot, packed in one array; all else that is
 * known of a state lies beside it under the same number.
 */
export class States {
  count = 0;
  location = new Int32Array(1024);
  parent = new Int32Array(1024);
  /** Number of the edge that led here first, or -1 at a start. */
  via = new Int32Array(1024);
  done = new Uint8Array(1024);
  cost = new Float64Array(1024);
  private codes: Uint8Array | Uint16Array;
  private table = new Int32Array(4096).fill(-1);
  private readonly slots: number;

  constructor(slots: number, wide: boolean) {
    this.slots = slots;
    this.codes = wide ? new Uint16Array(1024 * slots) : new Uint8Array(1024 * slots);
  }

  /** The number of this state, new (`count` grows) or known. */
  find(location: number, codes: ArrayLike<number>): number {
    const { slots } = this;
    let hash = Math.imul(location + 1, 0x9e3779b1);
    for (let i = 0; i < slots; i++) hash = Math.imul(hash ^ codes[i], 0x01000193) ^ (hash >>> 15);
    hash = finish(hash);
    const mask = this.table.length - 1;
    let at = hash & mask;
    for (;;) {
      const known = this.table[at];
      if (known < 0) break;
      if (this.location[known] === location && this.same(known, codes)) return known;
      at = (at + 1) & mask;
    }
    if (this.count === this.location.length) this.grow();
    const number = this.count++;
    this.location[number] = location;
    for (let i = 0; i < slots; i++) this.codes[number * slots + i] = codes[i];
    this.table[at] = number;
    if (this.count * 2 > this.table.length) this.rehash();
    return number;
  }

  /** Copies a state's codes. */
  read(number: number, into: Uint16Array): void {
    const at = number * this.slots;
    for (let i = 0; i < this.slots; i++) into[i] = this.codes[at + i];
  }

  private same(number: number, codes: ArrayLike<number>): boolean {
    const at = number * this.slots;
    for (let i = 0; i < this.slots; i++) if (this.codes[at + i] !== codes[i]) return false;
    return true;
  }

  private grow(): void {
    const size = this.location.length * 2;
    const grown = <T extends Int32Array | Float64Array | Uint8Array | Uint16Array>(old: T, into: T): T => {
      into.set(old);
      return into;
    };
    this.location = grown(this.location, new Int32Array(size));
    this.parent = grown(this.parent, new Int32Array(size));
    this.via = grown(this.via, new Int32Array(size));
    this.done = grown(this.done, new Uint8Array(size));
    this.cost = grown(this.cost, new Float64Array(size));
    this.codes =
      this.codes instanceof Uint8Array
        ? grown(this.codes, new Uint8Array(size * this.slots))
        : grown(this.codes, new Uint16Array(size * this.slots));
  }

  private rehash(): void {
    const { slots } = this;
    const table = new Int32Array(this.table.length * 2).fill(-1);
    const mask = table.length - 1;
    for (let number = 0; number < this.count; number++) {
      let hash = Math.imul(this.location[number] + 1, 0x9e3779b1);
      const from = number * slots;
      for (let i = 0; i < slots; i++)
        hash = Math.imul(hash ^ this.codes[from + i], 0x01000193) ^ (hash >>> 15);
      hash = finish(hash);
      let at = hash & mask;
      while (table[at] >= 0) at = (at + 1) & mask;
      table[at] = number;
    }
    this.table = table;
  }
}

/** Spreads the bits of a hash, so that its low ones can choose a place. */
function finish(hash: number): number {
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return hash ^ (hash >>> 16);
}
