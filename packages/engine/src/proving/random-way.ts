import { START, type Key, type Scattered } from '../moves/move.ts';
import type { Edge, Graph } from '../routine/graph.ts';

/**
 * Picks ways on as people do when they choose at random: by the options' weights, and a free shuffle so that every order of what it
 * mixes is as likely as any other, which its small exchanges taken one by one would not give.
 */
export class RandomWay {
  private readonly graph: Graph;
  private readonly random: () => number;
  /** What is still to be done of a shuffle that has begun, the next one last. */
  private readonly rest: Key[] = [];

  constructor(graph: Graph, random: () => number) {
    this.graph = graph;
    this.random = random;
  }

  /** One of the ways on from a location; `edges` has one at least. */
  pick(at: number, edges: readonly Edge[]): Edge {
    const location = this.graph.locations[at];
    const instruction = this.graph.instructionOf(location);
    if (location.phase === START) {
      this.rest.length = 0;
      if (location.at >= 0 && instruction?.do === 'move' && edges.length > 1) {
        const { move, args } = instruction;
        const stretches = move.scatters?.(args, this.graph.view(location)) ?? [];
        if (stretches.length > 0)
          this.rest.push('stop', ...stretches.flatMap((one) => exchanges(one, this.random)).reverse());
      }
    }
    const key = this.rest.pop();
    return edges.find((edge) => edge.key === key) ?? weighted(edges, this.random);
  }
}

/**
 * Keys of a move that scatters: `swap k` exchanges the k-th and the next, counted from 1 through the pile in units, `turn k` and `end k`
 * change one card. Each card in turn goes up by a random number of places, so that every order comes about alike.
 */
function exchanges({ at, count, unit = 1, faces, ends }: Scattered, random: () => number): Key[] {
  const keys: Key[] = [];
  const first = at / unit + 1;
  for (let i = 0; i < count / unit; i++) {
    const up = Math.floor(random() * (i + 1));
    for (let k = i - 1; k >= i - up; k--) keys.push(`swap ${first + k}`);
  }
  for (let p = at + 1; p <= at + count; p++) {
    if (faces === true && random() < 0.5) keys.push(`turn ${p}`);
    if (ends === true && random() < 0.5) keys.push(`end ${p}`);
  }
  return keys;
}

export function weighted(edges: readonly Edge[], random: () => number): Edge {
  let left = random() * edges.reduce((sum, { weight }) => sum + weight, 0);
  for (const edge of edges) {
    left -= edge.weight;
    if (left < 0) return edge;
  }
  return edges[edges.length - 1];
}
