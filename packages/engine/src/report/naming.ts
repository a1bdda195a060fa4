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
  /** Members whose one column is measured the other way round, 0 for 1. */
  readonly turned: readonly boolean[];
  readonly bits: readonly string[];
  /** Value of the only column, for each member, on a card in a setting of `bits`; used where there is one column. */
  readonly vectorOf: (card: Card, setting: number) => readonly number[];
}

export function namingOf(problem: Problem, cards: readonly Card[], graph: Graph): Naming {
  const bits = [...new Set(problem.members.flatMap(({ space }) => space.bits))];
  const word = (names: readonly string[], setting: number): number =>
    names.reduce((w, bit, i) => w | (((setting >> i) & 1) << graph.bits.indexOf(bit)), 0);
  const named = problem.members.map(({ space }) =>
    Array.from({ length: problem.d }, (_, k) => {
      const of = (card: Card, setting: number): number => space.valuesOf(card, word(space.bits, setting))[k];
      const trait = nameTrait({ bits: space.bits, of }, cards, problem.p);
      // Where 1 and 0 can change places, what is said of cards is better than what is denied of them.
      const isTurned = problem.p === 2 && problem.d === 1 && trait.isYesNo && trait.one.startsWith('not ');
      if (!isTurned) return { trait, isTurned };
      return {
        trait: nameTrait({ bits: space.bits, of: (card, setting) => 1 - of(card, setting) }, cards),
        isTurned,
      };
    }),
  );
  const turned = named.map((columns) => columns.some(({ isTurned }) => isTurned));
  return {
    problem,
    cards,
    traits: named.map((columns) => columns.map(({ trait }) => trait)),
    turned,
    bits,
    vectorOf: (card, setting) =>
      problem.members.map(({ space }, i) => {
        const [value] = space.valuesOf(card, word(bits, setting));
        return turned[i] ? 1 - value : value;
      }),
  };
}
