import { Budget } from '../packages/engine/src/base/budget.ts';
import { unroll, type Unrolled } from '../packages/engine/src/proving/smt-unroll.ts';
import { Graph } from '../packages/engine/src/routine/graph.ts';
import type { Routine } from '../packages/engine/src/routine/routine.ts';
import { startsOf } from '../packages/engine/src/routine/starts.ts';

/**
 * The working of a routine as layers without repetition, for peers that cannot repeat without end. What they decide is weaker than
 * what the engine decides, wherever `bounded` is true.
 */
export interface Bounded extends Unrolled {
  readonly graph: Graph;
  /** What each peer tells cards apart by: a small whole number a card, its kind. */
  readonly kinds: readonly number[];
  readonly kindCount: number;
  /** Whether each card lies face up at the start. */
  readonly up: readonly number[];
}

export function boundedOf(routine: Routine, attribute: string, rounds: number): Bounded {
  const graph = new Graph(routine);
  const { cards, bits } = startsOf(routine).base;
  const values = [...new Set(cards.map((card) => card.attributes[attribute]))];
  return {
    ...unroll(graph, graph.start, rounds, new Budget(50_000_000)),
    graph,
    kinds: cards.map((card) => values.indexOf(card.attributes[attribute])),
    kindCount: values.length,
    up: Array.from(bits, (word) => word & 1),
  };
}

/** The sentence in question, written by hand for the peers: whether a table of kinds and faces makes it true. */
export type Ending =
  { readonly says: 'one class one way' } | { readonly says: 'one of each'; readonly block: number };

export function isTrue(ending: Ending, kinds: ArrayLike<number>, up: ArrayLike<number>): boolean {
  if (ending.says === 'one class one way') {
    for (let s = 1; s < kinds.length; s++) if ((kinds[s] ^ up[s]) !== (kinds[0] ^ up[0])) return false;
    return true;
  }
  for (let from = 0; from + ending.block <= kinds.length; from += ending.block) {
    let seen = 0;
    for (let s = from; s < from + ending.block; s++) seen |= 1 << kinds[s];
    if (seen !== 2 ** ending.block - 1) return false;
  }
  return true;
}
