/** A queue that hands out what costs least, and of two at the same cost the one that came first. */
export class Heap<T> {
  private readonly items: { readonly cost: number; readonly turn: number; readonly item: T }[] = [];
  private turn = 0;

  push(cost: number, item: T): void {
    const { items } = this;
    items.push({ cost, turn: this.turn++, item });
    for (let at = items.length - 1; at > 0;) {
      const above = (at - 1) >> 1;
      if (!this.before(at, above)) break;
      this.swap(at, above);
      at = above;
    }
  }

  pop(): T | undefined {
    const { items } = this;
    if (items.length === 0) return undefined;
    this.swap(0, items.length - 1);
    const least = items.pop()!;
    for (let at = 0; ;) {
      let child = 2 * at + 1;
      if (child >= items.length) break;
      if (child + 1 < items.length && this.before(child + 1, child)) child++;
      if (!this.before(child, at)) break;
      this.swap(at, child);
      at = child;
    }
    return least.item;
  }

  private before(a: number, b: number): boolean {
    const x = this.items[a];
    const y = this.items[b];
    return x.cost < y.cost || (x.cost === y.cost && x.turn < y.turn);
  }

  private swap(a: number, b: number): void {
    const kept = this.items[a];
    this.items[a] = this.items[b];
    this.items[b] = kept;
  }
}
