import type { Card } from '../cards/card.ts';
import type { Problem } from '../proving/problem.ts';
import type { Graph } from '../routine/graph.ts';
import { nameTrait, type Trait } from './traits.ts';

/** What the columns of a problem measure, for each member. */
export interface Naming {
  readonly problem: Problem;
  readonly cards: readonly Card[];
  /** For each member, for each column. */
  readonly traits: readonly (readonly Trait[])[];
  readonly bits: readonly string[];
  /** Value of the only column, for each member, on a card in a setting of `bits`; used where there is one column. */
  readonly vectorOf: (card: Card, setting: number) => readonly number[];
}

export function namingOf(problem: Problem, cards: readonly Card[], graph: Graph): Naming {
  const bits = [...new Set(problem.members.flatMap(({ space }) => space.bits))];
  const word = (names: readonly string[], setting: number): number =>
    names.reduce((w, bit, i) => w | (((setting >> i) & 1) << graph.bits.indexOf(bit)), 0);
  const traits = problem.members.map(({ space }) =>
    Array.from({ length: problem.d }, (_, k) =>
      nameTrait(
        { bits: space.bits, of: (card, setting) => space.valuesOf(card, word(space.bits, setting))[k] },
        cards,
      ),
    ),
  );
  return {
    problem,
    cards,
    traits,
    bits,
    vectorOf: (card, setting) =>
      problem.members.map(({ space }) => space.valuesOf(card, word(bits, setting))[0]),
  };
}
