import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { SlotView } from '../claims/formula.ts';
import type { Key } from '../moves/move.ts';
import type { Way } from './exact.ts';
import type { Beliefs, Branch } from './beliefs.ts';

/** What the performer does at one belief, with how it came about publicly. */
export interface RuleLine {
  readonly belief: number;
  /** Number of the step as printed. */
  readonly step: string;
  /** Public choices and sights that lead here, in order. */
  readonly when: readonly string[];
  readonly key: Key;
}

export type GameResult =
  | { readonly won: true; readonly rule: readonly RuleLine[]; readonly beliefs: number }
  | {
      readonly won: false;
      readonly beliefs: number;
      /** A performance that fails although the performer plays along, and its dead end if it has one. */
      readonly way: Way;
      readonly stuck: Trouble | undefined;
    };

/**
 * Whether some rule for the performer's choices works against every choice of the spectators. A rule may rest only on what was
 * public; a repetition that the performer controls must end, one that the spectator controls may go on for ever. Solved as
 * a greatest fixpoint of least fixpoints over the beliefs.
 */
export function solveGame(
  beliefs: Beliefs,
  first: readonly number[],
  holdsAt: (location: number, table: SlotView) => boolean,
  stuckReason: (state: number) => Trouble | undefined,
): GameResult {
  const branches: Branch[][] = [];
  const lost: (number | undefined)[] = [];
  for (let i = 0; i < beliefs.all.length; i++) {
    const belief = beliefs.all[i];
    if (belief.turn === 'end') {
      lost[i] = belief.states.find((state) => !holdsAt(beliefs.load(state).id, beliefs.view));
      branches[i] = [];
    } else {
      lost[i] = beliefs.stuckIn(belief);
      // New beliefs are added at the end of the list while this goes on.
      branches[i] = lost[i] === undefined ? beliefs.branches(belief) : [];
    }
  }
  const count = beliefs.all.length;
  let hope = new Array<boolean>(count).fill(true);
  let won: number[];
  for (;;) {
    won = attract(beliefs, branches, lost, hope);
    const next = won.map((round) => round > 0);
    if (next.every((value, i) => value === hope[i])) break;
    hope = next;
  }
  if (first.every((id) => won[id] > 0))
    return { won: true, rule: ruleOf(beliefs, branches, won, first), beliefs: count };
  const start = first.find((id) => won[id] === 0) as number;
  const state = losingState(beliefs, branches, lost, won, start);
  if (state === undefined) {
    const way = beliefs.wayTo(beliefs.all[start].states[0]);
    return { won: false, beliefs: count, way, stuck: trouble('rule-never-ends') };
  }
  return { won: false, beliefs: count, way: beliefs.wayTo(state), stuck: stuckReason(state) };
}

/** Rounds (from 1) in which beliefs are found to be won, 0 for those that are not. `hope` stands in for endless repetitions. */
function attract(
  beliefs: Beliefs,
  branches: readonly (readonly Branch[])[],
  lost: readonly (number | undefined)[],
  hope: readonly boolean[],
): number[] {
  const won = new Array<number>(beliefs.all.length).fill(0);
  for (let round = 1, changed = true; changed; round++) {
    changed = false;
    const before = [...won];
    beliefs.all.forEach((belief, i) => {
      if (won[i] > 0 || lost[i] !== undefined) return;
      const sure = (branch: Branch): boolean =>
        branch.to.every((to) => before[to] > 0 || (branch.again && hope[to]));
      const good =
        belief.turn === 'end' ||
        (belief.turn === 'performer'
          ? branches[i].some(sure)
          : branches[i].length > 0 && branches[i].every(sure));
      if (good) {
        won[i] = round;
        changed = true;
      }
    });
  }
  return won;
}

function sure(branch: Branch, won: readonly number[], round: number): boolean {
  return branch.to.every((to) => won[to] > 0 && (won[to] < round || branch.again));
}

function ruleOf(
  beliefs: Beliefs,
  branches: readonly (readonly Branch[])[],
  won: readonly number[],
  first: readonly number[],
): RuleLine[] {
  const rule: RuleLine[] = [];
  const todo = [...first];
  const seen = new Set(todo);
  for (const id of todo) {
    const belief = beliefs.all[id];
    let next = branches[id];
    if (belief.turn === 'performer') {
      const chosen = branches[id].find((branch) => sure(branch, won, won[id])) as Branch;
      next = [chosen];
      if (branches[id].length > 1)
        rule.push({
          belief: id,
          step: belief.location.origin?.number ?? '',
          when: historyOf(beliefs, id),
          key: chosen.key,
        });
    }
    for (const branch of next)
      for (const to of branch.to)
        if (!seen.has(to)) {
          seen.add(to);
          todo.push(to);
        }
  }
  return rule;
}

function historyOf(beliefs: Beliefs, id: number): string[] {
  const said: string[] = [];
  for (let at = beliefs.all[id].from; at !== undefined; at = beliefs.all[at.belief].from)
    if (at.public !== '') said.push(at.public);
  return said.reverse();
}

/** Follows lost beliefs to a state that fails: the performer takes the first choice there is, the spectator a losing one. */
function losingState(
  beliefs: Beliefs,
  branches: readonly (readonly Branch[])[],
  lost: readonly (number | undefined)[],
  won: readonly number[],
  start: number,
): number | undefined {
  const seen = new Set<number>();
  const todo = [start];
  for (const id of todo) {
    const failing = lost[id];
    if (failing !== undefined) return failing;
    if (seen.has(id)) continue;
    seen.add(id);
    for (const branch of branches[id]) for (const to of branch.to) if (won[to] === 0) todo.push(to);
  }
  // Only repetitions that the performer cannot bring to an end are left.
  return undefined;
}
