import { START, type Key } from '../moves/move.ts';
import type { Arrival, Beliefs, Branch, PublicEvent } from './beliefs.ts';

/** What the performer does when such and such has become public: plain data, the same for every run on the same note. */
export interface RuleLine {
  /** Number of the step as printed. */
  readonly step: string;
  /** Where the choice is made. */
  readonly location: number;
  readonly key: Key;
  /** True where the step begins; other lines are decisions in the middle of one. */
  readonly begins: boolean;
  /** What the performer then takes to the end of the step, one key for each of its small decisions. */
  readonly keys: readonly Key[];
  /** What has become public by then, in order; several ways where the performer may treat them alike. */
  readonly ways: readonly (readonly PublicEvent[])[];
  /** False when there are more ways than are listed. */
  readonly complete: boolean;
  /** Names what the performer believes then, for the checker. */
  readonly digest: string;
}

/** A rule that works, written down. */
export interface WrittenRule {
  readonly lines: readonly RuleLine[];
  /** States of knowledge that it leads to. */
  readonly beliefs: number;
  /** (Location, table) pairs that were met in the search for it; under the rule there are no more. */
  readonly tables: number;
}

/** What the performer takes at each belief where there is something to choose; by number of the belief. */
export type Rule = ReadonlyMap<number, Branch>;

// More ways than anybody reads; a rule of more is still whole, and still checked.
const MOST_WAYS = 1000;

/** A line for every belief that the rule leads to where the performer has something to choose. */
export function written(
  beliefs: Beliefs,
  first: readonly Arrival[],
  branches: readonly (readonly Branch[])[],
  rule: Rule,
): WrittenRule {
  const { ways, complete } = waysTo(first, branches, rule);
  const reached = [...reachedBy(first, branches, rule).keys()];
  const lines = reached.flatMap((id): RuleLine[] => {
    const taken = rule.get(id);
    if (taken?.key === undefined) return [];
    const belief = beliefs.all[id];
    const { location } = belief;
    const begins = location.phase === START;
    const { keys, chosen } = toTheEnd(beliefs, branches, rule, id);
    if (begins ? !chosen : branches[id].length < 2) return [];
    return [
      {
        step: location.origin?.number ?? '',
        location: location.id,
        key: taken.key,
        begins,
        keys,
        ways: ways.get(id) ?? [],
        complete,
        digest: beliefs.digestOf(belief),
      },
    ];
  });
  return { lines, beliefs: reached.length, tables: beliefs.tables };
}

/** What the performer takes from a belief to the end of its step, and whether there was anything to choose. */
function toTheEnd(
  beliefs: Beliefs,
  branches: readonly (readonly Branch[])[],
  rule: Rule,
  from: number,
): { keys: Key[]; chosen: boolean } {
  const keys: Key[] = [];
  let chosen = false;
  for (let id = from; ;) {
    const taken = rule.get(id);
    if (taken?.key === undefined) return { keys, chosen };
    keys.push(taken.key);
    chosen ||= branches[id].length > 1;
    const next = taken.to.length === 1 ? taken.to[0].belief : undefined;
    if (next === undefined) return { keys, chosen };
    const { at, phase } = beliefs.all[next].location;
    if (at !== beliefs.all[id].location.at || phase === START) return { keys, chosen };
    id = next;
  }
}

/** Beliefs one after the other, with the choice that leads from each to the next. */
export type BeliefPath = readonly { readonly id: number; readonly key: Key | undefined }[];

/** Beliefs that can come about under the rule, nearest first, each with the way to it. */
export function reachedBy(
  first: readonly Arrival[],
  branches: readonly (readonly Branch[])[],
  rule: Rule,
): Map<number, BeliefPath> {
  const reached = new Map<number, BeliefPath>();
  for (const { belief: id } of first) reached.set(id, [{ id, key: undefined }]);
  // A map goes through what is added to it on the way.
  for (const [id, path] of reached)
    for (const { key, to } of followed(id, branches, rule))
      for (const { belief } of to)
        if (!reached.has(belief))
          reached.set(belief, [...path.slice(0, -1), { id, key }, { id: belief, key: undefined }]);
  return reached;
}

function followed(id: number, branches: readonly (readonly Branch[])[], rule: Rule): readonly Branch[] {
  const taken = rule.get(id);
  return taken === undefined ? branches[id] : [taken];
}

/** What may have become public on the way to each belief; a repetition without end makes them endless, so they are cut off. */
function waysTo(
  first: readonly Arrival[],
  branches: readonly (readonly Branch[])[],
  rule: Rule,
): { ways: Map<number, PublicEvent[][]>; complete: boolean } {
  const ways = new Map<number, PublicEvent[][]>();
  const known = new Set<string>();
  const todo: { belief: number; way: PublicEvent[] }[] = [];
  const add = ({ belief, learned }: Arrival, before: readonly PublicEvent[]): void => {
    const way = [...before, ...learned];
    const key = `${belief}: ${JSON.stringify(way)}`;
    if (known.has(key)) return;
    known.add(key);
    ways.set(belief, [...(ways.get(belief) ?? []), way]);
    todo.push({ belief, way });
  };
  for (const arrival of first) add(arrival, []);
  for (const { belief, way } of todo) {
    if (todo.length > MOST_WAYS) return { ways, complete: false };
    for (const { to } of followed(belief, branches, rule)) for (const arrival of to) add(arrival, way);
  }
  return { ways, complete: true };
}
