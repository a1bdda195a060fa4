import type { Card } from '../../src/cards/card.ts';
import { Budget } from '../../src/base/budget.ts';
import { regionFrom } from '../../src/proving/region.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { Graph } from '../../src/routine/graph.ts';
import type { Routine, Step } from '../../src/routine/routine.ts';
import { startsOf } from '../../src/routine/starts.ts';
import { Followed } from '../../src/structures/followed.ts';
import { steps } from '../naive/write.ts';
import type { Laid } from '../published/structures.ts';

/** A routine that begins with cards laid so; their classes are an attribute, `kind` by name unless said otherwise. */
export function laidRoutine(
  start: readonly Laid[],
  written: readonly (string | Step)[],
  attribute = 'kind',
  value: (x: number) => string | number = (x) => `k${x}`,
): Routine {
  const cards = start.map(({ x }, id): Card => ({
    id,
    name: `${id + 1}`,
    attributes: { [attribute]: value(x) },
  }));
  return {
    title: '',
    cards,
    setUp: {
      piles: [
        {
          name: 'packet',
          cards: start.map(({ up, end }, card) => ({ card, up: up === 1 ? 1 : 0, end: end === 1 ? 1 : 0 })),
        },
      ],
      freedoms: [],
    },
    steps: steps(...written),
    endings: [],
  };
}

/** What is followed through a routine, and where it ends. */
export function followedThrough(routine: Routine): {
  followed: Followed;
  graph: Graph;
  ends: readonly number[];
} {
  const graph = new Graph(routine);
  const region = regionFrom(graph, [graph.start], new Budget(Infinity));
  const followed = new Followed({ graph, region, starts: startsOf(routine) }, DEFAULT_LIMITS);
  return { followed, graph, ends: region.exits };
}
