import type { Key, Phase } from '../../moves/move.ts';
import { decide } from '../../proving/decide.ts';
import type { Decision } from '../../proving/decision.ts';
import type { Limits } from '../../proving/question.ts';
import type { EitherStep, Ending, MoveStep, RepeatStep, Routine, Step } from '../../routine/routine.ts';
import { narrower, type Choice } from './text.ts';
import { sayChosen } from './words.ts';
import { fill } from '../altering/fillings.ts';
import { moveById } from '../../moves/index.ts';
import { saySteps } from '../altering/narrow.ts';
import { outcomeSet } from '../altering/outcome-set.ts';
import { replaceStep, stepsOf } from '../altering/places.ts';

/** A condition on one choice under which a sentence that can fail is proved. */
export interface Condition {
  /**
   * `number`: some of the numbers that a step leaves open; `way`: one branch of a choice is never taken; `times`: a repetition is bounded;
   * `wording`: a step is exchanged for a narrower sentence.
   */
  readonly kind: 'number' | 'way' | 'times' | 'wording';
  /** The step it restricts, by the number it is printed with. */
  readonly step: string;
  /** Reads on after `Works when `: `N is even`, `the card does not go right to the bottom in step 2`. */
  readonly words: string;
  /** The part of the choices at that step that is left; above 0 and below 1. */
  readonly share: number;
  /** The step's sentence with the restriction; empty where no sentence says it. */
  readonly text: string;
  /** The routine with the restriction. */
  readonly routine: Routine;
}

/** Numbers that are tried one by one. */
const MOST_NUMBERS = 60;
/** Narrower sentences that are tried for a step. */
const MOST_SENTENCES = 6;
const MOST_WAYS = 400;

/**
 * Conditions on one choice of the spectators that make a sentence proved, in the order of the working. Each is decided as a routine of
 * its own, within `limits` each time. Nothing where the sentence is not refuted.
 */
export function* conditionsFor(routine: Routine, ending: Ending, limits: Limits): Generator<Condition> {
  const asked: Routine = { ...routine, endings: [ending] };
  const base = decide(asked, limits);
  const failure = base.sentences[0]?.failure;
  if (base.verdict !== 'refuted' || failure === undefined || ending.chance !== undefined) return;
  const isProved = (other: Routine): boolean => decide(other, limits).verdict === 'proved';
  // A choice that the failing performance never meets cannot save it.
  const met = new Set(failure.way.path.map(({ from }) => base.graph.locations[from].origin));
  const last = failure.way.path.at(-1);
  if (last !== undefined) met.add(base.graph.locations[last.to].origin);
  for (const step of stepsOf(routine)) {
    if (!met.has(step)) continue;
    if (step.do === 'move' && step.who === 'spectator') yield* ofMove(asked, step, base, isProved);
    if (step.do === 'either' && step.who === 'spectator') yield* ofBranches(asked, step, isProved);
    if (step.do === 'repeat' && step.who === 'spectator') yield* ofTimes(asked, step, isProved);
  }
}

/** The condition that leaves most of what was open; the first of several that leave as much. */
export function conditionFor(routine: Routine, ending: Ending, limits: Limits): Condition | null {
  let best: Condition | null = null;
  for (const one of conditionsFor(routine, ending, limits))
    if (best === null || one.share > best.share) best = one;
  return best;
}

type Proves = (routine: Routine) => boolean;

function* ofMove(routine: Routine, step: MoveStep, base: Decision, isProved: Proves): Generator<Condition> {
  let isSaid = false;
  for (const choice of choicesAt(step, base)) {
    const withOnly = (keys: readonly number[]): Routine =>
      replaceStep(routine, step.number, (one) => [{ ...one, only: { phase: choice.phase, keys } } as Step]);
    const single = choice.numbers.filter((n) => isProved(withOnly([n])));
    for (const numbers of rivals(single, choice.numbers)) {
      const restricted = withOnly(numbers);
      if (!isProved(restricted)) continue;
      const text = narrower(step, choice, numbers, base.graph);
      isSaid ||= text !== '';
      yield {
        kind: 'number',
        step: step.number,
        words: sayChosen(step, numbers, choice.numbers),
        share: numbers.length / choice.numbers.length,
        text,
        routine: restricted,
      };
      break;
    }
  }
  if (!isSaid) yield* ofWording(routine, step, base, isProved);
}

/** Phases of a step at which one of several numbers is chosen, as far as the search came. */
function choicesAt(step: MoveStep, { graph }: Decision): Choice[] {
  const phases = new Map<Phase, Map<number, Key[]>>();
  for (const { from, key, kind } of graph.edges) {
    const { origin, phase } = graph.locations[from];
    if (kind !== 'move' || origin !== step) continue;
    const at = phases.get(phase) ?? new Map<number, Key[]>();
    phases.set(phase, at.set(from, [...(at.get(from) ?? []), key]));
  }
  return [...phases].flatMap(([phase, at]) => {
    const keys = [...new Set([...at.values()].flat())];
    const numbers = keys.filter((key) => typeof key === 'number').sort((a, b) => a - b);
    if (numbers.length < keys.length || numbers.length < 2 || numbers.length > MOST_NUMBERS) return [];
    const locations = [...at.keys()].map((id) => graph.locations[id]).filter(({ looks }) => !looks);
    return locations.length < at.size
      ? []
      : [{ phase, numbers, at: locations.map((location) => ({ location, seen: undefined })) }];
  });
}

/**
 * What to try of numbers each of which works when nothing else is chosen: all of them, then what of them is even or odd, then each by
 * itself. Where the choice is met once, all of them are right at once.
 */
function rivals(single: readonly number[], all: readonly number[]): (readonly number[])[] {
  if (single.length === 0) return [];
  const even = single.filter((n) => n % 2 === 0);
  const odd = single.filter((n) => n % 2 === 1);
  const rest = [even, odd].sort((a, b) => b.length - a.length);
  return [...(single.length < all.length ? [single] : []), ...rest, ...single.map((n) => [n])].filter(
    (numbers, i, list) =>
      numbers.length > 0 && list.findIndex((other) => other.join() === numbers.join()) === i,
  );
}

/** Sentences of the same move that do some of what this one does and no more. */
function* ofWording(
  routine: Routine,
  step: MoveStep,
  base: Decision,
  isProved: Proves,
): Generator<Condition> {
  const location = base.graph.locations.find(({ origin, phase }) => origin === step && phase === 0);
  if (location === undefined || location.looks || usesNumber(step.args)) return;
  const now = outcomeSet([step], location.layout, MOST_WAYS);
  if (now === null || now.size < 2) return;
  const narrow = fill(moveById(step.move), location.layout)
    .flatMap(({ step: other }) => {
      const some = outcomeSet([other], location.layout, MOST_WAYS);
      const isLess =
        some !== null && some.size > 0 && some.size < now.size && [...some].every((one) => now.has(one));
      return isLess ? [{ args: other.args, size: some.size }] : [];
    })
    .sort((a, b) => b.size - a.size)
    .slice(0, MOST_SENTENCES);
  for (const { args, size } of narrow) {
    const made: MoveStep = { ...step, args };
    const restricted = replaceStep(routine, step.number, () => [made]);
    const text = saySteps([made]);
    if (text === null || !isProved(restricted)) continue;
    yield {
      kind: 'wording',
      step: step.number,
      words: `step ${step.number} says "${text}"`,
      share: size / now.size,
      text,
      routine: restricted,
    };
    return;
  }
}

/** Whether a sentence uses a number named before, without which its move cannot be done alone. */
function usesNumber(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return 'var' in value || Object.values(value).some(usesNumber);
}

function* ofBranches(routine: Routine, step: EitherStep, isProved: Proves): Generator<Condition> {
  if (step.branches.length < 2) return;
  for (const [i, branch] of step.branches.entries()) {
    const branches = step.branches.filter((_, k) => k !== i);
    const restricted = replaceStep(routine, step.number, () => [{ ...step, branches }]);
    if (!isProved(restricted)) continue;
    const moves = branch.filter((one) => one.do === 'move');
    const said = moves.length === branch.length && moves.length > 0 ? saySteps(moves) : null;
    yield {
      kind: 'way',
      step: step.number,
      words: `way ${i + 1} of step ${step.number} is never taken${said === null ? '' : ` ("${said}")`}`,
      share: branches.length / step.branches.length,
      text: '',
      routine: restricted,
    };
  }
}

/** Bounds of a repetition in the order of what they leave. A repetition without end has no share: it counts as done up to so often. */
const ROUNDS = 3;

function* ofTimes(routine: Routine, step: RepeatStep, isProved: Proves): Generator<Condition> {
  const { times } = step;
  if (times.of === 'exactly') return;
  const exactly = (n: number): Step => ({ ...step, times: { of: 'exactly', n } });
  const { number, range } = step;
  const upTo = (most: number): Step => ({
    do: 'either',
    who: 'spectator',
    branches: Array.from({ length: most + 1 }, (_, n) => [exactly(n)]),
    number,
    range,
  });
  const least = times.of === 'at least' ? times.n : 0;
  const bounds = [
    ...(least === 0 ? [{ made: upTo(2), words: 'at most twice', rounds: 2 }] : []),
    ...(least === 0 ? [{ made: upTo(1), words: 'at most once', rounds: 1 }] : []),
    ...(least <= 1 ? [{ made: exactly(1), words: 'exactly once', rounds: 0.5 }] : []),
  ];
  for (const { made, words, rounds } of bounds) {
    const restricted = replaceStep(routine, number, () => [made]);
    if (!isProved(restricted)) continue;
    yield {
      kind: 'times',
      step: number,
      words: `step ${number} is done ${words}`,
      share: rounds / (ROUNDS + 1),
      text: '',
      routine: restricted,
    };
    return;
  }
}
