import { moveById } from '../../moves/index.ts';
import { START } from '../../moves/move.ts';
import type { Layout } from '../../pictures/layout.ts';
import { decide } from '../../proving/decide.ts';
import type { Decision, VerdictName } from '../../proving/decision.ts';
import type { Limits } from '../../proving/question.ts';
import type { MoveStep, Routine, Step } from '../../routine/routine.ts';
import { fill } from '../altering/fillings.ts';
import { saySteps } from '../altering/narrow.ts';
import { outcomeSet } from '../altering/outcome-set.ts';
import { replaceStep, stepsOf } from '../altering/places.ts';

/** A change to one step of the working. */
export interface Alteration {
  readonly kind: 'drop' | 'repeat' | 'hand over' | 'widen';
  readonly number: string;
  /** The step as it would be; empty for a step left out. */
  readonly text: string;
  readonly routine: Routine;
}

/** A change with what it does to the ending. */
export interface AlterationRow extends Alteration {
  readonly verdict: VerdictName;
}

// More ways than this and a step is not compared with its freer versions.
const MOST_WAYS = 3_000;

/**
 * For every step: left out, done any number of times, given to the spectator, and its freest version that keeps the ending certain. Each
 * is decided as a routine of its own.
 */
export function* alterations(routine: Routine, decision: Decision, limits: Limits): Generator<AlterationRow> {
  for (const step of stepsOf(routine)) yield* alterationsOf(routine, decision, step, limits);
}

/** The changes of one step. */
export function* alterationsOf(
  routine: Routine,
  decision: Decision,
  step: Step,
  limits: Limits,
): Generator<AlterationRow> {
  const judged = (alteration: Alteration): AlterationRow => ({
    ...alteration,
    verdict: decide(alteration.routine, limits).verdict,
  });
  const { number } = step;
  if (step.do === 'move') {
    const widest = widened(routine, decision, step, limits);
    if (widest !== null) yield widest;
  }
  yield judged({ kind: 'drop', number, text: '', routine: replaceStep(routine, number, () => []) });
  if (mayRepeat(routine, step))
    yield judged({
      kind: 'repeat',
      number,
      text: 'any number of times',
      routine: replaceStep(routine, number, (one) => [repeated(one)]),
    });
  if ('who' in step && step.who === 'performer')
    yield judged({
      kind: 'hand over',
      number,
      text: 'the spectator chooses',
      routine: replaceStep(routine, number, (one) => ['who' in one ? { ...one, who: 'spectator' } : one]),
    });
}

/** A step that names something cannot be done twice, and one that is done at will already says nothing new. */
function mayRepeat(routine: Routine, step: Step): boolean {
  if (step.do === 'repeat' && step.times.of === 'any') return false;
  return stepsOf({ ...routine, steps: [step] }).every((one) => {
    if (one.do !== 'move') return true;
    const { numbers = [], marks = [] } = moveById(one.move).brings?.(one.args) ?? {};
    return numbers.length === 0 && marks.length === 0;
  });
}

function repeated(step: Step): Step {
  const { number, range } = step;
  return {
    do: 'repeat',
    times: { of: 'any' },
    who: 'spectator',
    body: [step],
    number: `${number}, repeated`,
    range,
  };
}

/** The version of a step that leaves most open and keeps the ending certain; null where none leaves more open than the step does. */
function widened(routine: Routine, decision: Decision, step: MoveStep, limits: Limits): AlterationRow | null {
  const layouts = layoutsOf(decision, step);
  const [layout] = layouts;
  if (layout === undefined) return null;
  const now = outcomeSet([step], layout, MOST_WAYS);
  if (now === null) return null;
  const freer = fill(moveById(step.move), layout)
    .flatMap(({ step: other }) => {
      const all = outcomeSet([other], layout, MOST_WAYS);
      const isFreer = all !== null && all.size > now.size && [...now].every((one) => all.has(one));
      return isFreer ? [{ step: other, size: all.size }] : [];
    })
    .sort((a, b) => b.size - a.size);
  for (const { step: other } of freer) {
    const made: MoveStep = { ...step, args: other.args };
    const changed = replaceStep(routine, step.number, () => [made]);
    const { verdict } = decide(changed, limits);
    if (verdict === 'proved')
      return { kind: 'widen', number: step.number, text: saySteps([made]) ?? '', routine: changed, verdict };
  }
  return null;
}

function layoutsOf({ graph, region }: Decision, step: Step): Layout[] {
  return (region?.order ?? []).flatMap((id) => {
    const { origin, phase, layout } = graph.locations[id];
    return origin === step && phase === START ? [layout] : [];
  });
}
