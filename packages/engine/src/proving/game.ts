import type { Key } from '../moves/move.ts';
import type { Way } from './exact.ts';
import type { Arrival, Beliefs, Branch } from './beliefs.ts';
import type { BeliefPath, Rule } from './rule.ts';

/** Why the performer cannot make a performance good. */
export type Loss =
  /** The sentence is false there, or the working cannot go on. */
  | { readonly is: 'failure'; readonly way: Way; readonly state: number }
  /** No choice of the performer's is possible in all cases that look alike. */
  | { readonly is: 'no choice'; readonly way: Way; readonly step: string }
  /** A repetition of the performer's never comes to an end. */
  | { readonly is: 'endless'; readonly way: Way };

export type GameResult =
  | {
      readonly won: true;
      readonly rule: Rule;
      readonly first: readonly Arrival[];
      readonly branches: readonly (readonly Branch[])[];
    }
  | { readonly won: false; readonly loss: Loss };

/**
 * Whether some rule for the performer's choices works against every choice of the spectators. A rule may rest only on what was
 * public; a repetition that the performer controls must end, one that the spectator controls may go on for ever. Solved as
 * a greatest fixpoint of least fixpoints over the beliefs (Buechi games; W. Thomas, On the synthesis of strategies in infinite
 * games, 1995).
 */
export function solveGame(
  beliefs: Beliefs,
  first: readonly Arrival[],
  isLost: (belief: Beliefs['all'][number]) => number | undefined,
): GameResult {
  const branches: Branch[][] = [];
  const lost: (number | undefined)[] = [];
  // New beliefs are added at the end of the list while this goes on.
  for (let i = 0; i < beliefs.all.length; i++) {
    const belief = beliefs.all[i];
    lost[i] = isLost(belief);
    branches[i] = lost[i] === undefined ? beliefs.branches(belief) : [];
  }
  const won = winning(beliefs, branches, lost);
  const start = first.find(({ belief }) => won[belief] === 0);
  if (start === undefined) return { won: true, rule: ruleOf(beliefs, branches, won), first, branches };
  return { won: false, loss: lossFrom(beliefs, branches, lost, won, start.belief) };
}

/** Rounds (from 1) in which beliefs are found to be won, 0 for those that are lost. */
function winning(
  beliefs: Beliefs,
  branches: readonly (readonly Branch[])[],
  lost: readonly (number | undefined)[],
): number[] {
  let hope = new Array<boolean>(beliefs.all.length).fill(true);
  for (;;) {
    const won = attract(beliefs, branches, lost, hope);
    const next = won.map((round) => round > 0);
    if (next.every((value, i) => value === hope[i])) return won;
    hope = next;
  }
}

/** One least fixpoint; `hope` stands in for endless repetitions of the spectator's. */
function attract(
  beliefs: Beliefs,
  branches: readonly (readonly Branch[])[],
  lost: readonly (number | undefined)[],
  hope: readonly boolean[],
): number[] {
  const won = new Array<number>(beliefs.all.length).fill(0);
  const before: number[][] = beliefs.all.map(() => []);
  branches.forEach((list, i) => list.forEach(({ to }) => to.forEach(({ belief }) => before[belief].push(i))));
  const isSure = ({ to, again }: Branch, round: number): boolean =>
    to.every(({ belief }) => (won[belief] > 0 && won[belief] < round) || (again && hope[belief]));
  const isGood = (i: number, round: number): boolean => {
    const { turn } = beliefs.all[i];
    if (turn === 'end') return true;
    if (turn === 'performer') return branches[i].some((branch) => isSure(branch, round));
    return branches[i].length > 0 && branches[i].every((branch) => isSure(branch, round));
  };
  let open = beliefs.all.map(({ id }) => id);
  for (let round = 1; open.length > 0; round++) {
    const found = open.filter((i) => won[i] === 0 && lost[i] === undefined && isGood(i, round));
    for (const i of found) won[i] = round;
    open = [...new Set(found.flatMap((i) => before[i]))];
  }
  return won;
}

/** At every belief that is won the choice by which it is won soonest. */
function ruleOf(beliefs: Beliefs, branches: readonly (readonly Branch[])[], won: readonly number[]): Rule {
  const rule = new Map<number, Branch>();
  for (const { id, turn } of beliefs.all) {
    if (turn !== 'performer' || won[id] === 0) continue;
    const soonest = branches[id].find(({ to }) =>
      to.every(({ belief }) => won[belief] > 0 && won[belief] < won[id]),
    );
    // A belief is won in its round by a branch that was won before it.
    if (soonest === undefined) throw new Error('a won belief without a choice that wins');
    rule.set(id, soonest);
  }
  return rule;
}

/** Follows lost beliefs, nearest first, to one that is lost on the spot: the performer may choose as he likes. */
function lossFrom(
  beliefs: Beliefs,
  branches: readonly (readonly Branch[])[],
  lost: readonly (number | undefined)[],
  won: readonly number[],
  start: number,
): Loss {
  const from = new Map<number, { belief: number; key: Key | undefined }>();
  const path = (id: number): BeliefPath => {
    const steps: { id: number; key: Key | undefined }[] = [{ id, key: undefined }];
    for (let at = from.get(id); at !== undefined; at = from.get(at.belief))
      steps.unshift({ id: at.belief, key: at.key });
    return steps;
  };
  const todo = [start];
  const seen = new Set(todo);
  for (const id of todo) {
    const failing = lost[id];
    if (failing !== undefined)
      return { is: 'failure', way: beliefs.wayThrough(path(id), failing), state: failing };
    const belief = beliefs.all[id];
    if (branches[id].length === 0)
      return {
        is: 'no choice',
        way: beliefs.wayThrough(path(id), belief.states[0]),
        step: belief.location.origin?.number ?? '',
      };
    for (const { key, to } of branches[id])
      for (const { belief: next } of to)
        if (won[next] === 0 && !seen.has(next)) {
          seen.add(next);
          from.set(next, { belief: id, key });
          todo.push(next);
        }
  }
  // Only repetitions that the performer cannot bring to an end are left.
  return {
    is: 'endless',
    way: beliefs.wayThrough([{ id: start, key: undefined }], beliefs.all[start].states[0]),
  };
}
