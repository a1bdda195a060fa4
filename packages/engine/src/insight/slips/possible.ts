import { isStuck, START, type Key, type Move, type Option } from '../../moves/move.ts';
import type { Action } from '../../pictures/actions.ts';
import { sizeOf, type Layout } from '../../pictures/layout.ts';
import type { Budget } from '../../base/budget.ts';
import { BudgetEnded, type Edge, type Graph } from '../../routine/graph.ts';
import type { MoveStep } from '../../routine/routine.ts';
import { moveSteps } from '../../routine/sight.ts';
import { SLIPS } from './index.ts';
import type { Slip, SlipAfter, SlipInstead } from './slip.ts';

/** A moment at which a slip can happen, with all its ways as edges of the routine graph. */
export interface SlipMoment {
  /** Where its first decision is made. */
  readonly at: number;
  /** It happens only to tables that come by one of these edges; undefined: to all that are there. */
  readonly by: readonly Edge[] | undefined;
  /** What is seen there, where it happens in a move that looks at cards. */
  readonly seen: Key | undefined;
  /** Edges decision by decision; those of a later one leave from where those of the one before lead. */
  readonly decisions: readonly (readonly Edge[])[];
}

/** One kind of slip in one step. */
export interface PossibleSlip {
  readonly step: MoveStep;
  readonly slip: Slip;
  readonly moments: readonly SlipMoment[];
}

/** A location, with what is seen there where the move looks at cards. */
export interface Sighting {
  readonly location: number;
  readonly seen: Key | undefined;
}

interface Final {
  readonly edge: Edge;
  readonly actions: readonly Action[];
}

/** Every slip that can happen in the steps done at these locations, in the order of the note. Throws BudgetEnded. */
export function possibleSlips(graph: Graph, sightings: readonly Sighting[], budget: Budget): PossibleSlip[] {
  const found = new Map<MoveStep, Map<Slip, SlipMoment[]>>();
  const finals = new Map<MoveStep, Map<number, Final[]>>();
  const add = (step: MoveStep, slip: Slip, moment: SlipMoment): void => {
    if (moment.decisions.some((edges) => edges.length === 0)) return;
    if (!budget.spend(moment.decisions.reduce((sum, edges) => sum + edges.length, 0)))
      throw new BudgetEnded('budget ended while slips were listed');
    const slips = found.get(step) ?? new Map<Slip, SlipMoment[]>();
    found.set(step, slips);
    slips.set(slip, [...(slips.get(slip) ?? []), moment]);
  };
  for (const { location: id, seen } of sightings) {
    const location = graph.locations[id];
    const instruction = graph.instructionOf(location);
    if (instruction?.do !== 'move') continue;
    const { step, move, args } = instruction;
    const view = graph.view(location, seen);
    const options = move.options(args, view);
    if (isStuck(options)) continue;
    const last = options.filter(({ next }) => next === null);
    if (location.phase === START)
      for (const slip of SLIPS) {
        if (slip.when !== 'instead') continue;
        const edges = wrongly(slip, options).flatMap((option) =>
          insteadOf(slip, { graph, id, step, move, view, option }),
        );
        add(step, slip, { at: id, by: undefined, seen, decisions: [edges] });
      }
    const { edges } = graph.waysFrom(id, seen, budget);
    for (const option of last) {
      const edge = edges.find(({ key }) => key === option.key);
      if (edge === undefined) continue;
      const byEnd = finals.get(step) ?? new Map<number, Final[]>();
      finals.set(step, byEnd);
      byEnd.set(edge.to, [...(byEnd.get(edge.to) ?? []), { edge, actions: option.actions }]);
    }
  }
  for (const [step, byEnd] of finals)
    for (const [end, some] of byEnd)
      for (const slip of SLIPS) {
        if (slip.when !== 'after') continue;
        const handled = handledIn(
          some.flatMap(({ actions }) => actions),
          graph.locations[end].layout,
        );
        const decisions = afterwards(graph, slip, step, end, handled);
        add(step, slip, { at: end, by: some.map(({ edge }) => edge), seen: undefined, decisions });
      }
  return moveSteps(graph.routine.steps).flatMap((step) =>
    SLIPS.flatMap((slip): PossibleSlip[] => {
      const moments = found.get(step)?.get(slip);
      return moments === undefined ? [] : [{ step, slip, moments }];
    }),
  );
}

/** Options that are done wrongly from beginning to end; one that stands for all where it makes no difference which. */
export function wrongly(slip: SlipInstead, options: readonly Option[]): readonly Option[] {
  if (slip.whole !== true) return options.filter(({ next }) => next === null);
  const some = options.find(({ actions }) => actions.length > 0);
  return some === undefined ? [] : [some];
}

interface Instead {
  readonly graph: Graph;
  readonly id: number;
  readonly step: MoveStep;
  readonly move: Move;
  readonly view: Parameters<SlipInstead['ways']>[0]['view'];
  readonly option: {
    readonly key: Key;
    readonly actions: readonly Action[];
    readonly set?: Readonly<Record<string, number>>;
  };
}

/** The ways of doing an option wrongly, as edges that lead to the next step. */
export function insteadOf(slip: SlipInstead, { graph, id, step, move, view, option }: Instead): Edge[] {
  return slip.ways({ step, move, view, option }).map(({ key, words, actions }) =>
    graph.aside(id, {
      key,
      words,
      step,
      actions,
      passes: true,
      ...(option.set === undefined ? {} : { set: option.set }),
    }),
  );
}

/** Decisions of a slip that happens where a step has just been done. */
export function afterwards(
  graph: Graph,
  { decisions }: SlipAfter,
  step: MoveStep,
  end: number,
  handled: readonly string[],
): Edge[][] {
  let at = [end];
  return decisions.map((ways) => {
    const edges = at.flatMap((id) =>
      ways(handled, graph.locations[id].layout).map(({ key, words, actions }) =>
        graph.aside(id, { key, words, step, actions, passes: false }),
      ),
    );
    at = [...new Set(edges.map(({ to }) => to))];
    return edges;
  });
}

/** The piles on which hands were just at work; all there are where no card moved. */
export function handledIn(actions: readonly Action[], layout: Layout): string[] {
  const names = new Set(
    actions.flatMap((action) => (action.do === 'carry' ? [action.from, action.to] : [action.pile])),
  );
  const there = layout.names.filter((name) => !name.startsWith('~') && sizeOf(layout, name) > 0);
  const handled = there.filter((name) => names.has(name));
  return handled.length === 0 ? there : handled;
}

/** Where a performance stands once the slip has happened, whichever way. */
export function endsOf({ moments }: Pick<PossibleSlip, 'moments'>): number[] {
  const ends = moments.flatMap(({ decisions }) => decisions[decisions.length - 1].map(({ to }) => to));
  return [...new Set(ends)];
}

/** In how many ways it can happen: which card, which place, and so on. */
export function waysIn({ moments }: Pick<PossibleSlip, 'moments'>): number {
  const most = Math.max(...moments.map(({ decisions }) => decisions.length));
  let ways = 1;
  for (let i = 0; i < most; i++)
    ways *= new Set(moments.flatMap(({ decisions }) => (decisions[i] ?? []).map(({ key }) => String(key))))
      .size;
  return ways;
}
