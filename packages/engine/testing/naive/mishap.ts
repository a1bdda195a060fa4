import { START } from '../../src/moves/move.ts';
import type { Ending, MoveStep, Routine, Step } from '../../src/routine/routine.ts';
import { exitAt } from './judge.ts';
import { listFrame, MomentKeys, settle, type Moment } from './machine.ts';
import { startsOf, type Start } from './starts.ts';
import { Bits, tableKey } from './table.ts';
import { sentenceAt } from './truth.ts';
import { nextOf } from './ways-on.ts';

/**
 * Every performance in which something happens once, just before one step (or, for null, when all is done), by brute force: whenever the
 * step is about to be done it may happen, and then never again. Not for a repetition, which is met again each time round.
 */
export class NaiveMishap {
  private readonly bits = new Bits();
  private readonly ends: { readonly start: Start; readonly moment: Moment; readonly isStuck: boolean }[] = [];

  constructor(routine: Routine, before: Step | null, mishap: readonly MoveStep[]) {
    for (const start of startsOf(routine)) this.walk(routine, start, before, mishap);
  }

  isCertain({ sentence }: Ending): boolean {
    return this.ends.every(({ start, moment, isStuck }) => {
      const said = sentenceAt(sentence)(exitAt(start, moment), this.bits);
      return !isStuck && said.ok && said.value.test(moment.table);
    });
  }

  private walk(routine: Routine, start: Start, before: Step | null, mishap: readonly MoveStep[]): void {
    const keys = new MomentKeys();
    const known = new Set<string>();
    const first: Moment = {
      table: start.table,
      numbers: {},
      frames: [listFrame(routine.steps)],
      phase: START,
    };
    const queue: { readonly moment: Moment; readonly happened: boolean }[] = [];
    const arrive = (moment: Moment, happened: boolean): void => {
      const { moment: there, decision } = settle(moment);
      const next = decision.decide === 'nothing: it is over' ? null : decision.step;
      if (!happened && there.phase === START && next === before)
        arrive({ ...there, frames: [...there.frames, listFrame(mishap)] }, true);
      const key = `${happened} ${keys.place(there)}\n${tableKey(there.table)}`;
      if (known.has(key)) return;
      known.add(key);
      queue.push({ moment: there, happened });
    };
    arrive(first, false);
    for (const { moment, happened } of queue) {
      const next = nextOf(moment, start.cards, this.bits);
      if (next.is === 'ways') for (const { to } of next.ways) arrive(to, happened);
      else if (next.is === 'stuck') {
        if (happened) this.ends.push({ start, moment, isStuck: true });
      } else if (happened) this.ends.push({ start, moment, isStuck: false });
    }
  }
}
