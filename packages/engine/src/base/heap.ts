interface Bucket {
  readonly cost: number;
  items: Int32Array;
  head: number;
  tail: number;
}

/**
 * A queue of small whole numbers, least cost first; equal costs come out in order of arrival. Costs are few and items many, so
 * items of one cost share a bucket and only the costs stand in a heap.
 */
export class CostQueue {
  size = 0;
  private readonly buckets = new Map<number, Bucket>();
  private readonly heap: Bucket[] = [];
  private last: Bucket | undefined;

  push(item: number, cost: number): void {
    let bucket = this.last;
    if (bucket === undefined || bucket.cost !== cost) {
      bucket = this.buckets.get(cost);
      if (bucket === undefined) {
        bucket = { cost, items: new Int32Array(16), head: 0, tail: 0 };
        this.buckets.set(cost, bucket);
        this.rise(bucket);
      }
      this.last = bucket;
    }
    if (bucket.tail === bucket.items.length) {
      const live = bucket.tail - bucket.head;
      const items = new Int32Array(Math.max(16, live * 2));
      items.set(bucket.items.subarray(bucket.head, bucket.tail));
      bucket.items = items;
      bucket.head = 0;
      bucket.tail = live;
    }
    bucket.items[bucket.tail++] = item;
    this.size++;
  }

  /** Cost of the next item; the queue must not be empty. */
  nextCost(): number {
    return this.heap[0].cost;
  }

  /** Takes the next item; the queue must not be empty. */
  pop(): number {
    const bucket = this.heap[0];
    const item = bucket.items[bucket.head++];
    this.size--;
    if (bucket.head === bucket.tail) {
      this.buckets.delete(bucket.cost);
      if (this.last === bucket) this.last = undefined;
      this.sink();
    }
    return item;
  }

  private rise(bucket: Bucket): void {
    const { heap } = this;
    let at = heap.push(bucket) - 1;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (heap[up].cost <= bucket.cost) break;
      heap[at] = heap[up];
      at = up;
    }
    heap[at] = bucket;
  }

  /** Removes the heap's first bucket. */
  private sink(): void {
    const { heap } = this;
    const bucket = heap.pop() as Bucket;
    if (heap.length === 0) return;
    let at = 0;
    for (;;) {
      let down = 2 * at + 1;
      if (down >= heap.length) break;
      if (down + 1 < heap.length && heap[down + 1].cost < heap[down].cost) down++;
      if (bucket.cost <= heap[down].cost) break;
      heap[at] = heap[down];
      at = down;
    }
    heap[at] = bucket;
  }
}
