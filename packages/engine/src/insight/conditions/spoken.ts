import type { Phase } from '../../moves/move.ts';
import type { OutlineItem } from '../../note/outline.ts';
import { boundedItems, boundsSaid, isSame, sayBound, type Bound, type BoundStep } from '../../note/patter.ts';
import type { ArgValue } from '../../phrases/values.ts';
import { decide } from '../../proving/decide.ts';
import type { Limits } from '../../proving/question.ts';
import type { Routine, Step } from '../../routine/routine.ts';
import { replaceStep, stepsOf } from '../altering/places.ts';

/** A bound of a spectator's choice that has to be said aloud, because a proved sentence fails without it. */
export interface Spoken {
  /** The step by the number it is printed with. */
  readonly step: string;
  /** `at most 10`, `not right to the bottom`. */
  readonly words: string;
  /** The line of patter that says it; null where none does. */
  readonly line: string | null;
}

/**
 * Every bound of a spectator's choice that the proved sentences need, and the patter that says it. Each bound is taken away by itself, and
 * the routine decided anew within `limits`.
 */
export function spokenIn(routine: Routine, outline: readonly OutlineItem[], limits: Limits): Spoken[] {
  const items = boundedItems(outline).filter(({ steps }) => steps.some(({ bounds }) => bounds.length > 0));
  if (items.length === 0) return [];
  const proved = decide(routine, limits)
    .sentences.filter(({ verdict }) => verdict === 'proved')
    .map(({ ending }) => ending);
  if (proved.length === 0) return [];
  const asked: Routine = { ...routine, endings: proved };
  const known = new Set<string>();
  // Inner items stand after the block they belong to, and what is said beside the block is said of them too.
  const found = items.reverse().map(({ steps, lines }) =>
    steps.flatMap(({ step, bounds }) =>
      bounds.flatMap((bound) => {
        const key = `${step.number} ${sayBound(bound)}`;
        if (known.has(key)) return [];
        known.add(key);
        if (!isNeeded(asked, step, bound, limits)) return [];
        const isSaid = (text: string): boolean => boundsSaid(text).some((one) => isSame(one, bound));
        return [{ step: step.number, words: sayBound(bound), line: lines.find(isSaid) ?? null }];
      }),
    ),
  );
  return found.reverse().flat();
}

/** Whether a sentence fails when a choice is bounded by the others only. */
function isNeeded(asked: Routine, step: BoundStep['step'], bound: Bound, limits: Limits): boolean {
  const most = asked.cards.length;
  const freer = replaceStep(asked, step.number, (one) => [without(one, bound, most)]);
  const decision = decide(freer, limits);
  if (decision.verdict !== 'refuted') return false;
  if (bound.bound !== 'not on top' && bound.bound !== 'not to the bottom') return true;
  // Both ends were opened: the other one is shut again.
  const [opened] = stepsOf(freer).filter(({ number }) => number === step.number);
  const phases = new Map<Phase, Set<number>>();
  for (const { from, key } of decision.graph.edges) {
    const { origin, phase } = decision.graph.locations[from];
    if (origin === opened && typeof key === 'number')
      phases.set(phase, (phases.get(phase) ?? new Set<number>()).add(key));
  }
  for (const [phase, places] of phases) {
    const keys = [...places].sort((a, b) => a - b);
    if (keys.length < 2) continue;
    const only = { phase, keys: bound.bound === 'not on top' ? keys.slice(0, -1) : keys.slice(1) };
    const half = replaceStep(freer, step.number, (one) => [one.do === 'move' ? { ...one, only } : one]);
    return decide(half, limits).verdict === 'refuted';
  }
  return true;
}

/** The step without one bound of its choice. */
function without(step: Step, bound: Bound, most: number): Step {
  if (step.do === 'repeat') return step.times.of === 'at least' ? { ...step, times: { of: 'any' } } : step;
  if (step.do !== 'move') return step;
  const args = Object.fromEntries(
    Object.entries(step.args).map(([name, value]) => [name, freed(name, value, bound, most)]),
  );
  return { ...step, args };
}

/** More than any number that is asked for: one beyond the cards tells whether there must be an end. */
const BEYOND = 2;

function freed(name: string, value: ArgValue, bound: Bound, most: number): ArgValue {
  switch (bound.bound) {
    case 'not on top':
    case 'not to the bottom':
      return value === 'in the middle' ? 'anywhere' : value;
    case 'least':
      if (name === 'from' && value === bound.n) return 1;
      break;
    case 'most':
      if (name === 'to' && value === bound.n) return Math.max(bound.n, most) + BEYOND;
      break;
    case 'multiple':
      if (name === 'kind') return 'a number';
      break;
  }
  if (typeof value !== 'object' || Array.isArray(value)) return value;
  if ('cards' in value) return { ...value, cards: freed('', value.cards, bound, most) } as ArgValue;
  if (!('of' in value)) return value;
  switch (value.of) {
    case 'range':
      return bound.bound === 'least' ? { of: 'at most', n: value.to } : { of: 'at least', n: value.from };
    case 'at least':
    case 'at most':
    case 'multiple':
      return { of: 'any' };
    default:
      return value;
  }
}
