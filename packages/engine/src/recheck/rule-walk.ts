import type { Budget } from '../base/budget.ts';
import { SetDigest } from '../base/digest.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { SlotView } from '../claims/formula.ts';
import { START, type Key } from '../moves/move.ts';
import type { Edge, Graph, Location } from '../routine/graph.ts';
import { isUnseen, knownByNature } from '../routine/sight.ts';
import type { StartTable } from '../routine/starts.ts';
import { seenAt, slotView } from '../routine/table.ts';
import type { RuleProof } from '../verdicts/certificate.ts';
import { codesFor, type Codes } from './codes.ts';
import { spent, TABLE_WORK } from './spent.ts';

/** A table at a moment of the working. */
interface Standing {
  readonly key: string;
  readonly here: Location;
  readonly codes: readonly number[];
}

/** All standings that look alike to the performer, by their keys. */
type Alike = ReadonlyMap<string, Standing>;

/** One that the walk has come to, and where each way on leads; `again` where the spectator may go round for ever. */
interface Moment {
  readonly alike: Alike;
  readonly to: { readonly moment: string; readonly again: boolean }[];
}

class Fault extends Error {
  readonly trouble: Trouble;

  constructor(code: string, at: Location | undefined) {
    super(code);
    this.trouble = trouble(code, at === undefined ? {} : { location: at.key });
  }
}

/**
 * Plays the rule against every choice of the spectators: what it says must be possible in all cases that look alike, whatever is
 * reached must be good, and only the spectators may go on for ever. Sets of tables are made anew as plain sets of strings.
 */
export function checkRule(
  graph: Graph,
  universe: readonly Card[],
  starts: Iterable<StartTable>,
  rule: RuleProof,
  budget: Budget,
  atExit: (exit: number, table: SlotView) => Trouble | undefined,
): Trouble | undefined {
  try {
    return new RuleWalk(graph, codesFor(graph, universe, rule), rule, budget, atExit).run(starts);
  } catch (error) {
    if (error instanceof Fault) return error.trouble;
    throw error;
  }
}

class RuleWalk {
  private readonly moments = new Map<string, Moment>();
  private readonly todo: string[] = [];
  private readonly met = new Set<string>();
  private readonly choices = new Map<string, Key>();
  private readonly graph: Graph;
  private readonly codes: Codes;
  private readonly rule: RuleProof;
  private readonly budget: Budget;
  private readonly atExit: (exit: number, table: SlotView) => Trouble | undefined;

  constructor(
    graph: Graph,
    codes: Codes,
    rule: RuleProof,
    budget: Budget,
    atExit: (exit: number, table: SlotView) => Trouble | undefined,
  ) {
    this.graph = graph;
    this.codes = codes;
    this.rule = rule;
    this.budget = budget;
    this.atExit = atExit;
    for (const { at, digest, key } of rule.choices) this.choices.set(`${at} ${digest}`, key);
  }

  run(starts: Iterable<StartTable>): Trouble | undefined {
    let first: Standing[] = [];
    for (const start of starts) first.push(this.standing(this.graph.start, this.codes.of(start)));
    if (first[0]?.here.at === -1) first = this.onwards(first, ({ here }) => here.at === -1);
    this.apart(first);
    for (let id = this.todo.pop(); id !== undefined; id = this.todo.pop()) {
      const fault = this.leave(this.moments.get(id) as Moment);
      if (fault !== undefined) return fault;
    }
    return this.hasCircle() ? trouble('certificate-rule-endless') : undefined;
  }

  /** Fills in where a moment leads. */
  private leave({ alike, to }: Moment): Trouble | undefined {
    const all = [...alike.values()];
    const [{ here }] = all;
    if (here.exit) {
      for (const { codes } of all) {
        const fault = this.atExit(here.id, slotView(this.codes.table(codes), this.graph));
        if (fault !== undefined) return fault;
      }
      return undefined;
    }
    const lead = (next: readonly Standing[], again: boolean): void =>
      this.apart(next).forEach((moment) => to.push({ moment, again }));
    const step = this.stepAt(here);
    const performers = step !== undefined && 'who' in step && step.who === 'performer';
    if (step?.do === 'move' && !performers && !knownByNature(step)) {
      lead(
        this.onwards(all, (at, first) => first || (at.here.at === here.at && at.here.phase !== START)),
        false,
      );
      return undefined;
    }
    const ways = all.map((one) =>
      this.edgesFrom(one).map((edge) => ({ key: edge.key, after: this.after(one, edge) })),
    );
    const keys = new Set(ways.flatMap((list) => list.map(({ key }) => key)));
    const by = (key: Key): Standing[] =>
      ways.flatMap((list) => list.filter((way) => way.key === key).map(({ after }) => after));
    if (!performers || ways.every((list) => list.length === 1)) {
      for (const key of keys) lead(by(key), !performers && step?.do === 'repeat' && key === 'again');
      return undefined;
    }
    const chosen = this.choices.get(`${here.key} ${digestOf(alike)}`);
    if (chosen === undefined || !ways.every((list) => list.some(({ key }) => key === chosen)))
      return trouble('certificate-rule', { location: here.key });
    lead(by(chosen), false);
    return undefined;
  }

  /** Goes on while `inside` says so; what is then reached is what the performer next sees. */
  private onwards(from: readonly Standing[], inside: (at: Standing, first: boolean) => boolean): Standing[] {
    const out = new Map<string, Standing>();
    const seen = new Set<string>();
    const go = (list: readonly Standing[], first: boolean): Standing[] =>
      list.flatMap((at) => {
        if (!inside(at, first)) {
          out.set(at.key, at);
          return [];
        }
        if (!first && seen.has(at.key)) return [];
        seen.add(at.key);
        return this.edgesFrom(at).map((edge) => this.after(at, edge));
      });
    for (let open = go(from, true); open.length > 0;) open = go(open, false);
    return [...out.values()];
  }

  /** Sorts standings by what is seen of them, and names the moments they make. */
  private apart(standings: readonly Standing[]): string[] {
    const ready = this.onwards(standings, ({ here }) => {
      const step = this.stepAt(here);
      return step !== undefined && isUnseen(step, knownByNature);
    });
    const looks = new Map<string, Map<string, Standing>>();
    for (const one of ready) {
      const look = this.lookOf(one);
      if (!looks.has(look)) looks.set(look, new Map());
      looks.get(look)?.set(one.key, one);
    }
    return [...looks.values()].map((alike) => {
      const id = [...alike.keys()].sort().join('\n');
      if (!this.moments.has(id)) {
        if (this.moments.size >= this.rule.beliefs) throw new Fault('certificate-rule', undefined);
        this.moments.set(id, { alike, to: [] });
        this.todo.push(id);
      }
      return id;
    });
  }

  private lookOf({ here, codes }: Standing): string {
    const step = this.stepAt(here);
    const counters = this.graph.program.instructions.flatMap((i) =>
      i.do === 'each' ? [i.step.counter] : [],
    );
    const turns = counters.map((name) => here.numbers[name] ?? '-').join();
    const place = `${here.at} ${typeof here.phase} ${here.phase} ${turns}`;
    if (step?.do !== 'move' || !here.looks || !knownByNature(step)) return place;
    const seen = seenAt(this.graph, here, slotView(this.codes.table(codes), this.graph));
    return `${place} ${typeof seen} ${String(seen)}`;
  }

  private stepAt(here: Location) {
    const instruction = this.graph.instructionOf(here);
    return instruction !== undefined && 'step' in instruction ? instruction.step : undefined;
  }

  private edgesFrom({ here, codes }: Standing): readonly Edge[] {
    const view = slotView(this.codes.table(codes), this.graph);
    const { edges, stuck } = this.graph.waysFrom(here.id, seenAt(this.graph, here, view));
    if (stuck !== undefined) throw new Fault('certificate-stuck', here);
    return edges;
  }

  private after({ codes }: Standing, { to, effect }: Edge): Standing {
    return this.standing(to, this.codes.after(codes, effect));
  }

  private standing(location: number, codes: readonly number[]): Standing {
    spent(this.budget, TABLE_WORK);
    const here = this.graph.locations[location];
    const key = `${here.key}|${codes.join()}`;
    this.met.add(key);
    if (this.met.size > this.rule.tables) throw new Fault('certificate-rule', here);
    return { key, here, codes };
  }

  /** Whether one can go round without the spectator having asked to. */
  private hasCircle(): boolean {
    const waiting = new Map([...this.moments.keys()].map((id) => [id, 0]));
    for (const { to } of this.moments.values())
      for (const { moment, again } of to) if (!again) waiting.set(moment, (waiting.get(moment) ?? 0) + 1);
    const free = [...waiting].flatMap(([id, count]) => (count === 0 ? [id] : []));
    let done = 0;
    for (const id of free) {
      done++;
      for (const { moment, again } of this.moments.get(id)?.to ?? []) {
        if (again) continue;
        const left = (waiting.get(moment) ?? 0) - 1;
        waiting.set(moment, left);
        if (left === 0) free.push(moment);
      }
    }
    return done < this.moments.size;
  }
}

function digestOf(alike: Alike): string {
  const digest = new SetDigest();
  for (const key of alike.keys()) digest.add(key);
  return digest.hex();
}
