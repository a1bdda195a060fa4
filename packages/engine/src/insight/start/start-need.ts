import { Budget } from '../../base/budget.ts';
import { sparser } from '../../base/sparse.ts';
import type { Card } from '../../cards/card.ts';
import { kernelFor } from '../../proving/kernel.ts';
import { needOf } from '../../proving/need.ts';
import { equationsOf, problemsOf, type Member, type Problem } from '../../proving/problem.ts';
import { Meanings, type Limits } from '../../proving/question.ts';
import { regionFrom, type Region } from '../../proving/region.ts';
import type { Layout } from '../../pictures/layout.ts';
import { Graph } from '../../routine/graph.ts';
import type { Ending, Routine, Sentence } from '../../routine/routine.ts';
import { startsOf, type Starts } from '../../routine/starts.ts';

/** One equation that the packet must satisfy when the working begins, for one member of its family. */
export interface StartLine {
  readonly ending: Ending;
  readonly problem: Problem;
  readonly member: Member;
  /** Dense row of `problem.width`. */
  readonly row: readonly number[];
}

/** What the cards must be like when the working begins, whatever they were in the note's own set-up. */
export interface StartNeed {
  readonly graph: Graph;
  readonly region: Region;
  readonly starts: Starts;
  readonly layout: Layout;
  /** Bits of the card in each slot, as the set-up lays it. */
  readonly bits: readonly number[];
  readonly lines: readonly StartLine[];
  readonly families: readonly {
    readonly ending: Ending;
    readonly problem: Problem;
    readonly rows: readonly (readonly number[])[];
  }[];
  /** Sentences that are no equations: nothing is said of them. */
  readonly leftOut: readonly Ending[];
  /** Sentences about the order in which the cards began: which cards these are does not matter to them. */
  readonly ofOrder: readonly Ending[];
}

/**
 * Works back from the ending to the beginning of the working, whatever the verdict on the note; null for a working that looks at cards
 * or can get stuck. Throws BudgetEnded.
 */
export function startNeed(routine: Routine, limits: Limits): StartNeed | null {
  const settled: Routine = { ...routine, setUp: { ...routine.setUp, freedoms: openFaces(routine) } };
  const graph = new Graph(settled);
  if (graph.locations[graph.start].looksAhead) return null;
  const budget = new Budget(limits.work, limits.goOn);
  const region = regionFrom(graph, [graph.start], budget);
  if (region.stuck.length > 0) return null;
  const starts = startsOf(routine);
  const leftOut: Ending[] = [];
  const ofOrder: Ending[] = [];
  const families: StartNeed['families'][number][] = [];
  for (const ending of routine.endings) {
    if (speaksOfOrder(ending.sentence)) {
      ofOrder.push(ending);
      continue;
    }
    const meanings = new Meanings(ending.sentence, { graph, starts, limits, budget });
    const exits = region.exits.flatMap((exit) => {
      const meaning = meanings.at(exit);
      const equations = meaning === null ? null : equationsOf(meaning.formula, starts.universe);
      return equations === null ? [] : [{ exit, equations }];
    });
    if (exits.length < region.exits.length) {
      leftOut.push(ending);
      continue;
    }
    for (const problem of problemsOf(graph, starts.universe, region.ops, exits)) {
      const kernel = kernelFor(problem, graph.cards);
      const need = needOf(problem, kernel, graph, region, budget);
      const rows = (need.at[graph.start] ?? []).map((i) => {
        const vector = need.rows.vector(i);
        return Array.from({ length: problem.width }, (_, k) => kernel.entry(vector, k));
      });
      families.push({ ending, problem, rows: sparser(rows, problem.width - problem.m, problem.p) });
    }
  }
  return {
    graph,
    region,
    starts,
    layout: graph.locations[graph.start].layout,
    bits: Array.from(starts.base.bits),
    families,
    lines: families.flatMap(({ ending, problem, rows }) =>
      rows.flatMap((row) => problem.members.map((member) => ({ ending, problem, member, row }))),
    ),
    leftOut,
    ofOrder,
  };
}

/** Faces that the set-up leaves open: whichever way they turn out, the packet must do. Order and kinds are what is asked about. */
export function openFaces({ setUp }: Pick<Routine, 'setUp'>): Routine['setUp']['freedoms'] {
  return setUp.freedoms.filter(({ free }) => free === 'faces');
}

/** Whether a sentence compares with the order at the start, and nothing else. */
function speaksOfOrder(sentence: Sentence): boolean {
  switch (sentence.says) {
    case 'claim':
      return sentence.claim === 'starting-order';
    case 'and':
      return sentence.parts.every(speaksOfOrder);
    case 'up to':
      return speaksOfOrder(sentence.part);
    default:
      return false;
  }
}

/** What a card lying in a slot adds to the left side of an equation. */
export function shareOf({ problem, member, row }: StartLine, slot: number, card: Card, bits: number): number {
  const { d, p } = problem;
  const values = member.space.valuesOf(card, bits);
  let sum = 0;
  for (let k = 0; k < d; k++) sum = (sum + row[slot * d + k] * values[k]) % p;
  return sum;
}

/** What the equation's constants add. */
export function constantOf({ problem, member, row }: StartLine): number {
  const { p, m, width } = problem;
  return member.constants.reduce((sum, constant, j) => (sum + constant * row[width - m + j]) % p, 0);
}

/** The slots an equation speaks of. */
export function slotsOf({ problem, row }: StartLine): number[] {
  const { d, m, width } = problem;
  const slots = new Set<number>();
  for (let i = 0; i < width - m; i++) if (row[i] !== 0) slots.add(Math.floor(i / d));
  return [...slots];
}
