import { layoutKey } from '../../src/pictures/layout.ts';
import { moveById } from '../../src/moves/index.ts';
import { isStuck, START, type Option } from '../../src/moves/move.ts';
import type { Action } from '../../src/pictures/actions.ts';
import type { Slip } from '../../src/insight/slips/slip.ts';
import { dealtByAll } from '../../src/insight/slips/dealing.ts';
import type { Ending, MoveStep, Routine, Step } from '../../src/routine/routine.ts';
import { exitAt } from './judge.ts';
import { listFrame, MomentKeys, past, settle, type Moment } from './machine.ts';
import { startsOf, type Start } from './starts.ts';
import { act, bitsOf, Bits, layoutOfTable, seenTable, tableKey, type Table } from './table.ts';
import { sentenceAt } from './truth.ts';
import { nextOf } from './ways-on.ts';

/** How the performances with one slip in one step go. */
export interface NaiveSlip {
  /** For each sentence and for all together: whether some performance makes it true, and whether some does not. */
  readonly sentences: readonly { readonly some: boolean; readonly fails: boolean }[];
  readonly together: boolean;
  /** Performances that show something, between two steps or at the end, which no right performance shows there. */
  readonly shown: number;
  readonly hidden: number;
}

interface Standing {
  readonly moment: Moment;
  /** Whether something has been seen that no right performance shows. */
  readonly showed: boolean;
}

/** What right performances have between steps: how many cards each pile has, and which way the card at each place may face. */
interface Open {
  readonly layouts: Set<string>;
  readonly faces: Set<string>;
}

/**
 * Every performance with just one slip of one kind in one step, by brute force: real cards, every choice, every moment at which the step
 * is done, every way to slip. Shares with the engine what the slips and moves do with their hands, nothing else.
 */
export class NaiveSlips {
  private readonly routine: Routine;
  private readonly starts: readonly Start[];
  private readonly bits = new Bits();
  private readonly right: { readonly start: Start; readonly moments: readonly Moment[] }[];
  private readonly open = new Map<Step | 'end', Open>();
  /** Piles that hands were at when a step ended with these piles on the table. */
  private readonly actions = new Map<string, Action[]>();
  private readonly ids = new Map<unknown, number>();

  constructor(routine: Routine) {
    this.routine = routine;
    this.starts = startsOf(routine);
    this.right = this.starts.map((start) => ({ start, moments: this.all(start, [first(routine, start)]) }));
    for (const { start, moments } of this.right)
      for (const moment of moments) {
        this.see(moment);
        this.finals(moment, start).forEach(({ step, option, to }) => {
          const key = this.endKey(step, to);
          this.actions.set(key, [...(this.actions.get(key) ?? []), ...option.actions]);
        });
      }
  }

  judge(step: MoveStep, slip: Slip, endings: readonly Ending[]): NaiveSlip | null {
    const sentences = endings.map(() => ({ some: false, fails: false }));
    let [together, shown, hidden, isPossible] = [false, 0, 0, false];
    for (const { start, moments } of this.right) {
      const slipped = moments.flatMap((moment) => this.slips(moment, start, step, slip));
      if (slipped.length > 0) isPossible = true;
      const keys = new MomentKeys();
      const known = new Set<string>();
      const queue: Standing[] = [];
      const arrive = (at: Moment, before: boolean): void => {
        const { moment } = settle(at);
        const showed = before || this.shows(moment, start);
        const key = `${showed} ${keys.place(moment)}\n${tableKey(moment.table)}`;
        if (known.has(key)) return;
        known.add(key);
        queue.push({ moment, showed });
      };
      for (const moment of slipped) arrive(moment, false);
      for (const { moment, showed } of queue) {
        const next = nextOf(moment, start.cards, this.bits);
        if (next.is === 'ways') {
          for (const { to } of next.ways) arrive(to, showed);
          continue;
        }
        // Who cannot go on has noticed.
        if (showed || next.is === 'stuck') shown++;
        else hidden++;
        let all = true;
        endings.forEach(({ sentence }, i) => {
          const said = sentenceAt(sentence)(exitAt(start, moment), this.bits);
          const isTrue = next.is === 'exit' && said.ok && said.value.test(moment.table);
          if (isTrue) sentences[i].some = true;
          else sentences[i].fails = true;
          all &&= isTrue;
        });
        together ||= all;
      }
    }
    return isPossible ? { sentences, together, shown, hidden } : null;
  }

  private all(start: Start, from: readonly Moment[]): Moment[] {
    const keys = new MomentKeys();
    const known = new Map<string, Moment>();
    const queue = from.map((moment) => settle(moment).moment);
    for (const moment of queue) {
      const key = `${keys.place(moment)}\n${tableKey(moment.table)}`;
      if (known.has(key)) continue;
      known.set(key, moment);
      const next = nextOf(moment, start.cards, this.bits);
      if (next.is === 'ways') for (const { to } of next.ways) queue.push(settle(to).moment);
    }
    return [...known.values()];
  }

  private finals(
    moment: Moment,
    start: Start,
  ): { readonly step: MoveStep; readonly option: Option; readonly to: Moment }[] {
    const { decision } = settle(moment);
    if (decision.decide !== 'move') return [];
    const { step } = decision;
    const options = this.optionsAt(moment, step, start);
    return options.flatMap((option) => {
      if (option.next !== null) return [];
      const numbers = option.set === undefined ? moment.numbers : { ...moment.numbers, ...option.set };
      return [{ step, option, to: past(moment, act(moment.table, option.actions, this.bits), numbers) }];
    });
  }

  private optionsAt(moment: Moment, step: MoveStep, start: Start): readonly Option[] {
    const move = moveById(step.move);
    const view = this.viewOf(moment, step, start);
    const options = move.options(step.args, view);
    return isStuck(options) ? [] : options;
  }

  private viewOf({ table, phase, numbers }: Moment, { move, args }: MoveStep, start: Start) {
    const blind = { layout: layoutOfTable(table), phase, numbers, seen: undefined };
    const seen = moveById(move).looks?.observe(args, seenTable(table, start.cards, this.bits), blind);
    return { ...blind, seen };
  }

  /** Moments right behind the slip, where this moment is one at which it can happen. */
  private slips(moment: Moment, start: Start, step: MoveStep, slip: Slip): Moment[] {
    const { decision } = settle(moment);
    if (decision.decide !== 'move' || decision.step !== step) return [];
    if (slip.when === 'instead') {
      if (moment.phase !== START) return [];
      const move = moveById(step.move);
      const view = this.viewOf(moment, step, start);
      const options = this.optionsAt(moment, step, start);
      return options.flatMap((option) => {
        if (slip.whole === true ? option.actions.length === 0 : option.next !== null) return [];
        const numbers = option.set === undefined ? moment.numbers : { ...moment.numbers, ...option.set };
        return slip
          .ways({ step, move, view, option })
          .map(({ actions }) => past(moment, act(moment.table, actions, this.bits), numbers));
      });
    }
    return this.finals(moment, start).flatMap(({ to }) => {
      const handled = handledHere(this.actions.get(this.endKey(step, to)) ?? [], to.table);
      let tables: Table[] = [to.table];
      for (const ways of slip.decisions)
        tables = tables.flatMap((table) =>
          ways(handled, layoutOfTable(table)).map(({ actions }) => act(table, actions, this.bits)),
        );
      return tables.map((table) => ({ ...to, table }));
    });
  }

  private endKey(step: MoveStep, to: Moment): string {
    const { moment } = settle(to);
    return `${this.id(step)} ${this.id(stepAt(moment))} ${layoutKey(layoutOfTable(moment.table))} ${JSON.stringify(moment.numbers)}`;
  }

  private id(part: unknown): number {
    let id = this.ids.get(part);
    if (id === undefined) this.ids.set(part, (id = this.ids.size));
    return id;
  }

  private see(moment: Moment): void {
    if (moment.phase !== START) return;
    const at = stepAt(moment);
    const open = this.open.get(at) ?? { layouts: new Set<string>(), faces: new Set<string>() };
    this.open.set(at, open);
    const layout = layoutKey(layoutOfTable(moment.table));
    open.layouts.add(layout);
    const { names, piles } = moment.table;
    piles.forEach((cards, i) =>
      cards.forEach((lies, place) => open.faces.add(`${layout} ${names[i]} ${place} ${bitsOf(lies) & 1}`)),
    );
  }

  private shows(moment: Moment, start: Start): boolean {
    const open = moment.phase === START ? this.open.get(stepAt(moment)) : undefined;
    if (open === undefined) return false;
    const layout = layoutKey(layoutOfTable(moment.table));
    if (!open.layouts.has(layout)) return true;
    return this.facesSeen(moment, start).some((face) => !open.faces.has(`${layout} ${face}`));
  }

  /** Which way the top card of each pile faces, and every card that is dealt one by one next. */
  private facesSeen(moment: Moment, start: Start): string[] {
    const { names, piles } = moment.table;
    const face = (i: number, place: number): string => `${names[i]} ${place} ${bitsOf(piles[i][place]) & 1}`;
    const tops = names.map((_, i) => face(i, 0));
    const { decision } = settle(moment);
    if (decision.decide !== 'move') return tops;
    const options = this.optionsAt(moment, decision.step, start);
    const dealt = options.length === 0 ? null : dealtByAll(layoutOfTable(moment.table), options);
    if (dealt === null) return tops;
    const from = names.indexOf(dealt.pile);
    return [...tops, ...Array.from({ length: dealt.count }, (_, place) => face(from, place))];
  }
}

function first(routine: Routine, start: Start): Moment {
  return { table: start.table, numbers: {}, frames: [listFrame(routine.steps)], phase: START };
}

function stepAt(moment: Moment): Step | 'end' {
  const { decision } = settle(moment);
  return decision.decide === 'nothing: it is over' ? 'end' : decision.step;
}

/** The piles that hands were at; all of them where no card moved. */
function handledHere(actions: readonly Action[], { names }: Table): string[] {
  const touched = new Set<string>();
  for (const action of actions)
    if (action.do === 'carry') touched.add(action.from).add(action.to);
    else touched.add(action.pile);
  const lying = names.filter((name) => !name.startsWith('~'));
  const handled = lying.filter((name) => touched.has(name));
  return handled.length > 0 ? handled : lying;
}
