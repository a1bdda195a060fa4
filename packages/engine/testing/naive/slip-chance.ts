import { plus, rational, times, ZERO, type Rational } from '../../src/base/rational.ts';
import { moveById } from '../../src/moves/index.ts';
import { isStuck, START } from '../../src/moves/move.ts';
import type { Slip } from '../../src/insight/slips/slip.ts';
import type { Ending, MoveStep, Routine } from '../../src/routine/routine.ts';
import { exitAt } from './judge.ts';
import { listFrame, past, settle, type Moment } from './machine.ts';
import { startsOf, type Start } from './starts.ts';
import { act, Bits, layoutOfTable, type Table } from './table.ts';
import { sentenceAt } from './truth.ts';
import { nextOf } from './ways-on.ts';

/**
 * The chance that all endings are true when one slip happens at the doing number `doing` of a step, by following every way with real
 * cards: options by their weights, ways to slip alike. No move here may look at cards, and no repetition may be open.
 */
export function naiveSlipChance(
  routine: Routine,
  step: MoveStep,
  slip: Slip,
  endings: readonly Ending[],
  doing: number,
): Rational {
  const bits = new Bits();
  const starts = startsOf(routine);
  const holds = (start: Start, moment: Moment): boolean =>
    endings.every(({ sentence }) => {
      const said = sentenceAt(sentence)(exitAt(start, moment), bits);
      return said.ok && said.value.test(moment.table);
    });
  const go = (start: Start, at: Moment, left: number): Rational => {
    const { moment, decision } = settle(at);
    if (decision.decide === 'move' && decision.step === step && moment.phase === START && left === 0) {
      const outcomes = slipped(moment, step, slip, bits);
      if (outcomes.length === 0) throw new Error('the slip cannot happen here');
      const total = outcomes.reduce((all, { weight }) => plus(all, weight), ZERO);
      const sum = outcomes.reduce((all, { to, weight }) => plus(all, times(go(start, to, -1), weight)), ZERO);
      return times(sum, rational(total.d, total.n));
    }
    const next = nextOf(moment, start.cards, bits);
    if (next.is === 'exit') return rational(holds(start, moment) ? 1n : 0n);
    if (next.is === 'stuck') return ZERO;
    const begins = decision.decide === 'move' && decision.step === step && moment.phase === START;
    const weights = next.ways.map(({ key }) => weightOf(moment, key));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    return next.ways.reduce(
      (sum, { to }, i) =>
        plus(
          sum,
          times(go(start, to, begins ? left - 1 : left), rational(BigInt(weights[i]), BigInt(total))),
        ),
      ZERO,
    );
  };
  const sum = starts.reduce(
    (all, start) =>
      plus(
        all,
        go(
          start,
          { table: start.table, numbers: {}, frames: [listFrame(routine.steps)], phase: START },
          doing,
        ),
      ),
    ZERO,
  );
  return times(sum, rational(1n, BigInt(starts.length)));
}

function weightOf(moment: Moment, key: unknown): number {
  const { decision } = settle(moment);
  if (decision.decide !== 'move') return 1;
  const { table, numbers, phase } = moment;
  const { step } = decision;
  const options = moveById(step.move).options(step.args, {
    layout: layoutOfTable(table),
    phase,
    numbers,
    seen: undefined,
  });
  return isStuck(options) ? 1 : (options.find((option) => option.key === key)?.weight ?? 1);
}

function slipped(
  moment: Moment,
  step: MoveStep,
  slip: Slip,
  bits: Bits,
): { readonly to: Moment; readonly weight: Rational }[] {
  const move = moveById(step.move);
  const { table, numbers } = moment;
  const view = { layout: layoutOfTable(table), phase: START, numbers, seen: undefined };
  const options = move.options(step.args, view);
  if (isStuck(options)) return [];
  return options.flatMap((option) => {
    const after = option.set === undefined ? numbers : { ...numbers, ...option.set };
    const weight = rational(BigInt(option.weight ?? 1));
    if (slip.when === 'instead') {
      const ways = slip.ways({ step, move, view, option });
      return ways.map(({ actions }) => ({
        to: past(moment, act(table, actions, bits), after),
        weight: shared(weight, ways.length),
      }));
    }
    const done = act(table, option.actions, bits);
    let all: { table: Table; weight: Rational }[] = [{ table: done, weight }];
    for (const decide of slip.decisions)
      all = all.flatMap((one) => {
        const ways = decide(
          one.table.names.filter((name) => !name.startsWith('~')),
          layoutOfTable(one.table),
        );
        return ways.map(({ actions }) => ({
          table: act(one.table, actions, bits),
          weight: shared(one.weight, ways.length),
        }));
      });
    return all.map((one) => ({ to: past(moment, one.table, after), weight: one.weight }));
  });
}

function shared(weight: Rational, among: number): Rational {
  return times(weight, rational(1n, BigInt(among)));
}
