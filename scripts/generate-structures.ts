import { START } from '../packages/engine/src/moves/move.ts';
import type { Decision } from '../packages/engine/src/proving/decision.ts';
import { momentsOf } from '../packages/engine/src/proving/moments.ts';
import { DEFAULT_LIMITS } from '../packages/engine/src/proving/question.ts';
import { Followed } from '../packages/engine/src/structures/followed.ts';
import { neededStructures } from '../packages/engine/src/structures/needed.ts';

/** Moments of one step that are looked at: with other sizes of the piles the same structures are needed. */
const MOST_MOMENTS = 2;

/** The structures that the engine recognises in what the proved sentences of a note need when its steps begin, and in what is certain at its end. */
export function structuresIn(decision: Decision): {
  readonly structures: ReadonlySet<string>;
  readonly certain: ReadonlySet<string>;
} {
  const { graph, region, starts } = decision;
  const structures = new Set<string>();
  const certain = new Set<string>();
  if (region === undefined) return { structures, certain };
  const followed = new Followed({ graph, region, starts }, DEFAULT_LIMITS);
  const looked = new Map<unknown, number>();
  const moments = region.order.filter((id) => {
    const { phase, at, origin } = graph.locations[id];
    if (phase !== START || at < 0) return false;
    const before = looked.get(origin) ?? 0;
    looked.set(origin, before + 1);
    return before < MOST_MOMENTS;
  });
  const table = { graph, cards: starts.universe, subjects: followed.subjects };
  for (const sentence of decision.sentences.filter(({ verdict }) => verdict === 'proved'))
    for (const { problem, neededAt } of momentsOf(decision, sentence, DEFAULT_LIMITS) ?? [])
      for (const id of moments) {
        const { found } = neededStructures(problem, neededAt(id), graph.locations[id].layout, table);
        for (const { trade } of found) if (trade !== '') structures.add(trade);
      }
  for (const end of region.exits.slice(0, MOST_MOMENTS))
    for (const { trade } of followed.certainAt(end)) if (trade !== '') certain.add(trade);
  return { structures, certain };
}
