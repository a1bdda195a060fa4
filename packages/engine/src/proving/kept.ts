import type { Vector } from '../base/echelon.ts';

/**
 * Vectors kept during a search, with where they belong, what they cost and where they came from; one typed array for all of
 * them, since there may be tens of thousands.
 */
export class Kept {
  count = 0;
  location = new Int32Array(256);
  /** Number of the kept vector this one was made from, or a negative number. */
  parent = new Int32Array(256);
  /** Number of the edge it was made along, or -1. */
  edge = new Int32Array(256);
  cost = new Float64Array(256);
  private data: Vector;
  private readonly length: number;

  constructor(like: Vector) {
    this.length = like.length;
    this.data =
      like instanceof Uint32Array ? new Uint32Array(256 * this.length) : new Int32Array(256 * this.length);
  }

  add(vector: Vector, location: number, parent: number, edge: number, cost: number): number {
    if (this.count === this.location.length) this.grow();
    const number = this.count++;
    this.location[number] = location;
    this.parent[number] = parent;
    this.edge[number] = edge;
    this.cost[number] = cost;
    const at = number * this.length;
    for (let k = 0; k < this.length; k++) this.data[at + k] = vector[k];
    return number;
  }

  /** Copies a vector; a view of each would be tens of thousands of objects to no purpose. */
  read(number: number, into: Vector): void {
    const { data, length } = this;
    const at = number * length;
    for (let k = 0; k < length; k++) into[k] = data[at + k];
  }

  /** A view, not a copy: good until more is added. */
  vector(number: number): Vector {
    return this.data.subarray(number * this.length, (number + 1) * this.length);
  }

  private grow(): void {
    const size = this.count * 2;
    const location = new Int32Array(size);
    const parent = new Int32Array(size);
    const edge = new Int32Array(size);
    const cost = new Float64Array(size);
    location.set(this.location);
    parent.set(this.parent);
    edge.set(this.edge);
    cost.set(this.cost);
    const data =
      this.data instanceof Uint32Array
        ? new Uint32Array(size * this.length)
        : new Int32Array(size * this.length);
    data.set(this.data);
    this.location = location;
    this.parent = parent;
    this.edge = edge;
    this.cost = cost;
    this.data = data;
  }
}

/** What waits in a search: an edge (or -1) and the number of the kept vector to take along it. */
export class Waiting {
  private edges = new Int32Array(1024);
  private from = new Int32Array(1024);
  private count = 0;

  add(edge: number, from: number): number {
    if (this.count === this.edges.length) {
      const edges = new Int32Array(this.count * 2);
      const origins = new Int32Array(this.count * 2);
      edges.set(this.edges);
      origins.set(this.from);
      this.edges = edges;
      this.from = origins;
    }
    this.edges[this.count] = edge;
    this.from[this.count] = from;
    return this.count++;
  }

  edge(item: number): number {
    return this.edges[item];
  }

  origin(item: number): number {
    return this.from[item];
  }
}
