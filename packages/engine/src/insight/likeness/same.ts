import { layoutOf, type Layout } from '../../pictures/layout.ts';
import type { MoveStep } from '../../routine/routine.ts';
import { outcomeSet } from '../altering/outcome-set.ts';

/** Whether two ways of handling a packet can bring about just the same. */
export type Sameness =
  | { readonly is: 'the same'; readonly outcomes: number }
  | { readonly is: 'more'; readonly which: 1 | 2; readonly outcomes: readonly [number, number] }
  | { readonly is: 'different'; readonly shared: number; readonly outcomes: readonly [number, number] }
  /** One of them has too many ways, gets stuck, or looks at cards. */
  | { readonly is: 'not told'; readonly which: 1 | 2 };

// More ways than this are not compared.
const MOST_WAYS = 20_000;

/** Compares what two lists of steps can do to a packet of so many cards: every card's place, side and ends. */
export function compareSteps(one: readonly MoveStep[], other: readonly MoveStep[], cards: number): Sameness {
  const layout: Layout = layoutOf([['packet', cards]]);
  const first = outcomeSet(one, layout, MOST_WAYS);
  if (first === null) return { is: 'not told', which: 1 };
  const second = outcomeSet(other, layout, MOST_WAYS);
  if (second === null) return { is: 'not told', which: 2 };
  const shared = [...first].filter((outcome) => second.has(outcome)).length;
  if (shared === first.size && shared === second.size) return { is: 'the same', outcomes: shared };
  const outcomes = [first.size, second.size] as const;
  if (shared === second.size) return { is: 'more', which: 1, outcomes };
  if (shared === first.size) return { is: 'more', which: 2, outcomes };
  return { is: 'different', shared, outcomes };
}
