import type { Decision } from '../../proving/decision.ts';
import type { Limits } from '../../proving/question.ts';
import { momentsOf } from '../../proving/moments.ts';
import { Followed } from '../../structures/followed.ts';
import { neededStructures } from '../../structures/needed.ts';
import type { Found } from '../../structures/found.ts';

/**
 * Structures that are certain at the end whatever was chosen, are not claimed by a sentence that is proved, and are not true of every
 * arrangement of the cards. Only those that hold at every end. Throws BudgetEnded.
 */
export function alsoCertain(decision: Decision, limits: Limits): Found[] {
  const { graph, region, starts } = decision;
  if (region === undefined || region.exits.length === 0) return [];
  const followed = new Followed({ graph, region, starts }, limits);
  const nameOf = ({ subject, form, variant, piles, value }: Found): string =>
    [subject, form, variant, piles.join(), value].join('|');
  const ends = region.exits.map((exit) => new Map(followed.certainAt(exit).map((one) => [nameOf(one), one])));
  const claimed = new Set<string>();
  const [end] = region.exits;
  for (const sentence of decision.sentences) {
    if (sentence.verdict !== 'proved') continue;
    for (const { problem, neededAt } of momentsOf(decision, sentence, limits) ?? [])
      for (const found of neededStructures(problem, neededAt(end), graph.locations[end].layout, {
        graph,
        cards: starts.universe,
        subjects: followed.subjects,
      }).found)
        claimed.add(nameOf(found));
  }
  const [first, ...others] = ends;
  return [...first]
    .filter(([name]) => !claimed.has(name) && others.every((other) => other.has(name)))
    .map(([, found]) => found);
}
