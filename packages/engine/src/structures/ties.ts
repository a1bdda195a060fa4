/** Slots tied two by two, alike or opposite: which ties follow from others is seen without elimination. */
export class Ties {
  private readonly parent: number[];
  /** Whether a slot is opposite to its parent. */
  private readonly odd: number[];

  constructor(slots: number) {
    this.parent = Array.from({ length: slots }, (_, slot) => slot);
    this.odd = new Array<number>(slots).fill(0);
  }

  /** Ties two slots; false where it follows from what was tied before. A contradiction counts as new. */
  tie(a: number, b: number, odd: 0 | 1): boolean {
    const [x, y] = [this.root(a), this.root(b)];
    if (x.root === y.root) return (x.odd ^ y.odd) !== odd;
    this.parent[x.root] = y.root;
    this.odd[x.root] = x.odd ^ y.odd ^ odd;
    return true;
  }

  /** Whether the tie follows from what was tied before. */
  follows(a: number, b: number, odd: 0 | 1): boolean {
    const [x, y] = [this.root(a), this.root(b)];
    return x.root === y.root && (x.odd ^ y.odd) === odd;
  }

  private root(slot: number): { root: number; odd: number } {
    let [at, odd] = [slot, 0];
    while (this.parent[at] !== at) {
      odd ^= this.odd[at];
      at = this.parent[at];
    }
    // The way is made short for the next time.
    let [one, left] = [slot, odd];
    while (this.parent[one] !== one) {
      const [next, own] = [this.parent[one], this.odd[one]];
      this.parent[one] = at;
      this.odd[one] = left;
      left ^= own;
      one = next;
    }
    return { root: at, odd };
  }
}
