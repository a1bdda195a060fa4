/**
 * The set of (location, table) pairs an exact search has met. A table is one code a slot; all else that is known of a state lies
 * beside it under the same number.
 *
 * There may be millions, and whoever asked may want to stop at any time: so states lie in chunks that are never copied once they
 * are full, and a hash table that has become too small is moved over a few places at a time.
 */
export class States {
  count = 0;
  private readonly chunks: Chunk[] = [];
  /** One more than the number of a state, or 0: found by hash, then place by place. */
  private table = new Int32Array(1024);
  /** The hash table before it grew, until everything in it has been moved; and how far that has come. */
  private old: Int32Array | null = null;
  private moved = 0;
  private readonly slots: number;
  private readonly wide: boolean;

  constructor(slots: number, wide: boolean) {
    this.slots = slots;
    this.wide = wide;
  }

  locationOf(state: number): number {
    return this.chunks[state >>> CHUNK_BITS].location[state & IN_CHUNK];
  }

  /** Number of the state before it on the way from a start. */
  parentOf(state: number): number {
    return this.chunks[state >>> CHUNK_BITS].parent[state & IN_CHUNK];
  }

  /** Number of the edge that led here, or -1 at a start. */
  viaOf(state: number): number {
    return this.chunks[state >>> CHUNK_BITS].via[state & IN_CHUNK];
  }

  costOf(state: number): number {
    return this.chunks[state >>> CHUNK_BITS].cost[state & IN_CHUNK];
  }

  isDone(state: number): boolean {
    return this.chunks[state >>> CHUNK_BITS].done[state & IN_CHUNK] === 1;
  }

  finish(state: number): void {
    this.chunks[state >>> CHUNK_BITS].done[state & IN_CHUNK] = 1;
  }

  /** Says how a state is reached. */
  reach(state: number, parent: number, via: number, cost: number): void {
    const chunk = this.chunks[state >>> CHUNK_BITS];
    const at = state & IN_CHUNK;
    chunk.parent[at] = parent;
    chunk.via[at] = via;
    chunk.cost[at] = cost;
  }

  /** The number of this state, new (`count` grows) or known. */
  find(location: number, codes: ArrayLike<number>): number {
    const { slots } = this;
    let hash = Math.imul(location + 1, 0x9e3779b1);
    for (let i = 0; i < slots; i++) hash = Math.imul(hash ^ codes[i], 0x01000193) ^ (hash >>> 15);
    hash = spread(hash);
    const mask = this.table.length - 1;
    let at = hash & mask;
    for (let known = this.table[at]; known !== 0; known = this.table[at]) {
      if (this.same(known - 1, location, codes)) return known - 1;
      at = (at + 1) & mask;
    }
    if (this.old !== null) {
      const before = this.findOld(this.old, hash, location, codes);
      if (before >= 0) return before;
    }
    const state = this.add(location, codes);
    this.table[at] = state + 1;
    if (this.old !== null) this.move(this.old);
    else if (this.count * 5 > this.table.length * 3) {
      this.old = this.table;
      this.moved = 0;
      this.table = new Int32Array(this.table.length * 2);
    }
    return state;
  }

  /** Copies a state's codes. */
  read(state: number, into: Uint16Array): void {
    const { codes } = this.chunks[state >>> CHUNK_BITS];
    const at = (state & IN_CHUNK) * this.slots;
    for (let i = 0; i < this.slots; i++) into[i] = codes[at + i];
  }

  private findOld(old: Int32Array, hash: number, location: number, codes: ArrayLike<number>): number {
    const mask = old.length - 1;
    for (let at = hash & mask; old[at] !== 0; at = (at + 1) & mask)
      if (this.same(old[at] - 1, location, codes)) return old[at] - 1;
    return -1;
  }

  private same(state: number, location: number, codes: ArrayLike<number>): boolean {
    const chunk = this.chunks[state >>> CHUNK_BITS];
    if (chunk.location[state & IN_CHUNK] !== location) return false;
    const at = (state & IN_CHUNK) * this.slots;
    for (let i = 0; i < this.slots; i++) if (chunk.codes[at + i] !== codes[i]) return false;
    return true;
  }

  private add(location: number, codes: ArrayLike<number>): number {
    const state = this.count++;
    const at = state & IN_CHUNK;
    const number = state >>> CHUNK_BITS;
    let chunk = this.chunks[number];
    if (chunk === undefined) {
      // Most searches are small: the first chunk grows, the others are made whole.
      chunk = makeChunk(number === 0 ? LEAST : CHUNK, this.slots, this.wide);
      this.chunks.push(chunk);
    } else if (at === chunk.location.length) {
      chunk = grown(chunk, at * 2, this.slots, this.wide);
      this.chunks[number] = chunk;
    }
    chunk.location[at] = location;
    const from = at * this.slots;
    for (let i = 0; i < this.slots; i++) chunk.codes[from + i] = codes[i];
    return state;
  }

  /** Moves some places of the old hash table to the new one: enough to be done long before that one is full. */
  private move(old: Int32Array): void {
    const { table, slots } = this;
    const mask = table.length - 1;
    const end = Math.min(old.length, this.moved + MOVED_AT_ONCE);
    for (; this.moved < end; this.moved++) {
      const known = old[this.moved];
      if (known === 0) continue;
      const chunk = this.chunks[(known - 1) >>> CHUNK_BITS];
      const from = ((known - 1) & IN_CHUNK) * slots;
      let hash = Math.imul(chunk.location[(known - 1) & IN_CHUNK] + 1, 0x9e3779b1);
      for (let i = 0; i < slots; i++)
        hash = Math.imul(hash ^ chunk.codes[from + i], 0x01000193) ^ (hash >>> 15);
      let at = spread(hash) & mask;
      while (table[at] !== 0) at = (at + 1) & mask;
      table[at] = known;
    }
    if (end === old.length) this.old = null;
  }
}

const CHUNK_BITS = 14;
const CHUNK = 1 << CHUNK_BITS;
const IN_CHUNK = CHUNK - 1;
const LEAST = 256;
const MOVED_AT_ONCE = 8;

interface Chunk {
  readonly location: Int32Array;
  readonly parent: Int32Array;
  readonly via: Int32Array;
  readonly cost: Float64Array;
  readonly done: Uint8Array;
  readonly codes: Uint8Array | Uint16Array;
}

function makeChunk(size: number, slots: number, wide: boolean): Chunk {
  return {
    location: new Int32Array(size),
    parent: new Int32Array(size),
    via: new Int32Array(size),
    cost: new Float64Array(size),
    done: new Uint8Array(size),
    codes: wide ? new Uint16Array(size * slots) : new Uint8Array(size * slots),
  };
}

function grown(chunk: Chunk, size: number, slots: number, wide: boolean): Chunk {
  const next = makeChunk(size, slots, wide);
  next.location.set(chunk.location);
  next.parent.set(chunk.parent);
  next.via.set(chunk.via);
  next.cost.set(chunk.cost);
  next.done.set(chunk.done);
  next.codes.set(chunk.codes);
  return next;
}

/** Spreads the bits of a hash, so that its low ones can choose a place. */
function spread(hash: number): number {
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return hash ^ (hash >>> 16);
}
