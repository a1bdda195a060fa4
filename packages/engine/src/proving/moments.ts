import { Budget } from '../base/budget.ts';
import { nullspace } from '../base/nullspace.ts';
import type { Decision, SentenceDecision, Solved } from './decision.ts';
import { haveOf, type Entry, type Have } from './have.ts';
import { kernelFor } from './kernel.ts';
import { needOf } from './need.ts';
import { problemsOf, equationsOf, type Problem } from './problem.ts';
import { Meanings, type Limits } from './question.ts';

/** Have and need of one family of equations at every location. */
export interface Moments {
  readonly problem: Problem;
  readonly solved: Solved;
  readonly have: Have;
  /** Every linear relation in the family's columns that is certain at a location: dense rows of `problem.width` numbers. */
  readonly certainAt: (location: number) => readonly (readonly number[])[];
  /** What must be true there for the sentence to be certain: dense rows likewise. */
  readonly neededAt: (location: number) => readonly (readonly number[])[];
}

/**
 * Have and need for a sentence that is a conjunction of equations, whatever its verdict; null for others and for routines that
 * look at cards. Throws BudgetEnded when `limits` are spent.
 */
export function momentsOf(decision: Decision, sentence: SentenceDecision, limits: Limits): Moments[] | null {
  const { graph, starts, region } = decision;
  if (region === undefined || graph.locations[graph.start].looksAhead) return null;
  const budget = new Budget(limits.work, limits.goOn);
  let solved = sentence.solved;
  if (solved.length === 0) {
    const meanings = new Meanings(sentence.ending.sentence, { graph, starts, limits, budget });
    const exits = [];
    for (const exit of region.exits) {
      const meaning = meanings.at(exit);
      const equations = meaning === null ? null : equationsOf(meaning.formula, starts.universe);
      if (equations === null) return null;
      exits.push({ exit, equations });
    }
    solved = problemsOf(graph, starts.universe, region.ops, exits).map((problem) => {
      const kernel = kernelFor(problem, graph.cards);
      return { problem, kernel, need: needOf(problem, kernel, graph, region, budget) };
    });
  }
  return solved.map((one) => {
    const { problem, kernel, need } = one;
    const entries: Entry[] = starts.spanning.flatMap((table) =>
      problem.members.map((member) => ({
        location: graph.start,
        vector: kernel.ofTable(member, table),
        cost: 0,
      })),
    );
    const have = haveOf(problem, kernel, graph, entries, budget);
    const dense = (vector: Parameters<typeof kernel.entry>[0]): number[] =>
      Array.from({ length: problem.width }, (_, i) => kernel.entry(vector, i));
    return {
      problem,
      solved: one,
      have,
      certainAt: (location) =>
        nullspace(
          (have.at[location] ?? []).map((i) => dense(have.tables.vector(i))),
          problem.width,
          problem.p,
        ),
      neededAt: (location) => (need.at[location] ?? []).map((i) => dense(need.rows.vector(i))),
    };
  });
}
