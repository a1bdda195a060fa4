/** A queue of small whole numbers, least cost first; equal costs come out in order of arrival. */
export class CostQueue {
  private cost = new Float64Array(256);
  private order = new Float64Array(256);
  private item = new Int32Array(256);
  private arrivals = 0;
  size = 0;

  push(item: number, cost: number): void {
    if (this.size === this.item.length) this.grow();
    let at = this.size++;
    const order = this.arrivals++;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (this.cost[up] < cost || (this.cost[up] === cost && this.order[up] < order)) break;
      this.move(up, at);
      at = up;
    }
    this.put(at, item, cost, order);
  }

  /** Cost of the next item; the queue must not be empty. */
  nextCost(): number {
    return this.cost[0];
  }

  /** Takes the next item; the queue must not be empty. */
  pop(): number {
    const first = this.item[0];
    const last = --this.size;
    const cost = this.cost[last];
    const order = this.order[last];
    let at = 0;
    for (;;) {
      let down = 2 * at + 1;
      if (down >= last) break;
      if (down + 1 < last && this.before(down + 1, down)) down++;
      if (cost < this.cost[down] || (cost === this.cost[down] && order < this.order[down])) break;
      this.move(down, at);
      at = down;
    }
    this.put(at, this.item[last], cost, order);
    return first;
  }

  private before(a: number, b: number): boolean {
    return this.cost[a] < this.cost[b] || (this.cost[a] === this.cost[b] && this.order[a] < this.order[b]);
  }

  private move(from: number, to: number): void {
    this.put(to, this.item[from], this.cost[from], this.order[from]);
  }

  private put(at: number, item: number, cost: number, order: number): void {
    this.item[at] = item;
    this.cost[at] = cost;
    this.order[at] = order;
  }

  private grow(): void {
    const cost = new Float64Array(2 * this.size);
    const order = new Float64Array(2 * this.size);
    const item = new Int32Array(2 * this.size);
    cost.set(this.cost);
    order.set(this.order);
    item.set(this.item);
    this.cost = cost;
    this.order = order;
    this.item = item;
  }
}
