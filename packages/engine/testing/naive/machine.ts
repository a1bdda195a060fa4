import { START, type Phase } from '../../src/moves/move.ts';
import type {
  EachStep,
  EitherStep,
  MoveStep,
  NumberTest,
  RepeatStep,
  Step,
} from '../../src/routine/routine.ts';
import type { NumberRef } from '../../src/phrases/values.ts';
import type { Table } from './table.ts';

/**
 * What is still to be done, innermost last: the rest of a list of steps, a repetition between two rounds, or the piles
 * of a "for each pile" that have not had their turn.
 */
export type Frame =
  | { readonly rest: 'list'; readonly list: readonly Step[]; readonly at: number }
  | {
      readonly rest: 'rounds';
      readonly step: RepeatStep;
      readonly done: number;
      readonly total: number | null;
    }
  | { readonly rest: 'piles'; readonly step: EachStep; readonly left: readonly number[] };

/** Everything that matters for what may happen from here. */
export interface Moment {
  readonly table: Table;
  readonly numbers: Readonly<Record<string, number>>;
  readonly frames: readonly Frame[];
  /** Of the move that the innermost list stands at. */
  readonly phase: Phase;
}

/** A way on from a choice that hands do not see: go round again or not, this branch or that. */
export interface Way {
  readonly key: string | number;
  readonly off: 0 | 1;
  readonly to: Moment;
}

/** What has to be decided at a moment that stands still. */
export type Decision =
  | { readonly decide: 'nothing: it is over' }
  | { readonly decide: 'move'; readonly step: MoveStep }
  | { readonly decide: 'way'; readonly step: RepeatStep | EitherStep; readonly ways: readonly Way[] };

/** Goes on until there is something to decide. */
export function settle(moment: Moment): { readonly moment: Moment; readonly decision: Decision } {
  let { frames, numbers } = moment;
  if (moment.phase !== START) {
    const top = frames[frames.length - 1];
    const step = top?.rest === 'list' ? top.list[top.at] : undefined;
    if (step?.do !== 'move') throw new Error('in the middle of a move, but at no move');
    return { moment, decision: { decide: 'move', step } };
  }
  for (;;) {
    const here = (): Moment => ({ ...moment, frames, numbers });
    const top = frames[frames.length - 1];
    if (top === undefined) return { moment: here(), decision: { decide: 'nothing: it is over' } };
    const below = frames.slice(0, -1);
    if (top.rest === 'piles') {
      const name = top.step.counter;
      if (top.left.length === 0) {
        frames = below;
        numbers = Object.fromEntries(Object.entries(numbers).filter(([number]) => number !== name));
      } else {
        const [n, ...left] = top.left;
        frames = [...below, { ...top, left }];
        // A pile that has no cards when its turn comes is passed over.
        if (moment.table.names.includes(`${top.step.stem} ${n}`))
          frames = [...frames, listFrame(top.step.body)];
        numbers = { ...numbers, [name]: n };
      }
      continue;
    }
    if (top.rest === 'rounds') {
      const { step, done, total } = top;
      const least = step.times.of === 'at least' ? step.times.n : step.times.of === 'exactly' ? total! : 0;
      // Beyond the rounds that must be, only "again or not" matters, so the rounds need not be counted.
      const next = step.times.of === 'exactly' ? done + 1 : Math.min(done + 1, least);
      const again = [...below, { ...top, done: next }, listFrame(step.body)];
      if (done < least) frames = again;
      else if (step.times.of === 'exactly') frames = below;
      else {
        const ways: Way[] = [
          { key: 'stop', off: 0, to: { ...here(), frames: below } },
          { key: 'again', off: 1, to: { ...here(), frames: again } },
        ];
        return { moment: here(), decision: { decide: 'way', step, ways } };
      }
      continue;
    }
    if (top.at === top.list.length) {
      frames = below;
      continue;
    }
    const step = top.list[top.at];
    const after: Frame[] = [...below, { ...top, at: top.at + 1 }];
    switch (step.do) {
      case 'move':
        return { moment: here(), decision: { decide: 'move', step } };
      case 'repeat': {
        const total = step.times.of === 'exactly' ? valueOf(step.times.n, numbers) : null;
        frames = [...after, { rest: 'rounds', step, done: 0, total }];
        break;
      }
      case 'each':
        frames = [...after, { rest: 'piles', step, left: numbered(step.stem, moment.table) }];
        break;
      case 'if':
        frames = [...after, listFrame(passes(step.when, numbers) ? step.then : step.otherwise)];
        break;
      case 'either': {
        const ways = step.branches.map((branch, i) => ({
          key: i + 1,
          off: (i === 0 ? 0 : 1) as 0 | 1,
          to: { ...here(), frames: [...after, listFrame(branch)] },
        }));
        return { moment: here(), decision: { decide: 'way', step, ways } };
      }
    }
  }
}

/** After the move that a moment stands at. */
export function past(moment: Moment, table: Table, numbers: Moment['numbers']): Moment {
  const top = moment.frames[moment.frames.length - 1];
  if (top?.rest !== 'list') throw new Error('a move is done where no list of steps is');
  const frames = [...moment.frames.slice(0, -1), { ...top, at: top.at + 1 }];
  return { table, numbers, frames, phase: START };
}

export function listFrame(list: readonly Step[]): Frame {
  return { rest: 'list', list, at: 0 };
}

function valueOf(ref: NumberRef, numbers: Moment['numbers']): number {
  const value = typeof ref === 'number' ? ref : numbers[ref.var];
  if (value === undefined) throw new Error(`no value for ${JSON.stringify(ref)}`);
  return value;
}

function passes(test: NumberTest, numbers: Moment['numbers']): boolean {
  const value = valueOf({ var: test.number }, numbers);
  switch (test.is) {
    case 'equal':
      return value === test.n;
    case 'at least':
      return value >= test.n;
    case 'at most':
      return value <= test.n;
    case 'even':
      return value % 2 === 0;
    case 'odd':
      return value % 2 === 1;
  }
}

/** 1 to the greatest number of a pile `stem 1`, `stem 2`, ... that has cards. */
function numbered(stem: string, table: Table): number[] {
  let most = 0;
  for (const name of table.names) {
    const tail = name.startsWith(`${stem} `) ? name.slice(stem.length + 1) : '';
    if (/^\d+$/.test(tail)) most = Math.max(most, Number(tail));
  }
  return Array.from({ length: most }, (_, i) => i + 1);
}

/** Writes moments as text, one text for each moment; lists and steps are numbered as they are met. */
export class MomentKeys {
  private readonly ids = new Map<unknown, number>();

  private id(part: unknown): number {
    let id = this.ids.get(part);
    if (id === undefined) this.ids.set(part, (id = this.ids.size));
    return id;
  }

  /** Everything but the table. */
  place(moment: Moment): string {
    let key = `${typeof moment.phase === 'string' ? `"${moment.phase}` : moment.phase}`;
    for (const frame of moment.frames) {
      if (frame.rest === 'list') key += `;${this.id(frame.list)}.${frame.at}`;
      else if (frame.rest === 'rounds') key += `;r${this.id(frame.step)}.${frame.done}/${frame.total}`;
      else key += `;p${this.id(frame.step)}.${frame.left.join(',')}`;
    }
    for (const name of Object.keys(moment.numbers).sort()) key += `;${name}=${moment.numbers[name]}`;
    return key;
  }
}
