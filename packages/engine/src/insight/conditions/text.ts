import { moveById } from '../../moves/index.ts';
import { isStuck, type Key, type Phase } from '../../moves/move.ts';
import type { Amount, Args, ArgValue } from '../../phrases/values.ts';
import type { Graph, Location } from '../../routine/graph.ts';
import type { MoveStep } from '../../routine/routine.ts';
import { patternOf } from '../altering/choice-words.ts';
import { saySteps } from '../altering/narrow.ts';

/** Where a step asks for a number: the moments of one phase of it, and all the numbers among which one is chosen there. */
export interface Choice {
  readonly phase: Phase;
  readonly at: readonly { readonly location: Location; readonly seen: Key | undefined }[];
  readonly numbers: readonly number[];
}

/** The step as a sentence that leaves just these numbers of a choice open; empty where none does. */
export function narrower(
  step: MoveStep,
  { at, numbers: all }: Choice,
  some: readonly number[],
  graph: Graph,
): string {
  const move = moveById(step.move);
  for (const args of variants(step.args, some, all)) {
    if ((move.check?.(args) ?? []).length > 0) continue;
    const isExact = at.every(({ location, seen }) => {
      const view = graph.view(location, seen);
      const now = move.options(step.args, view);
      const then = move.options(args, view);
      if (isStuck(now) || isStuck(then)) return false;
      const left = now.map(({ key }) => key).filter((key) => typeof key === 'number' && some.includes(key));
      return then.map(({ key }) => key).join() === left.join();
    });
    const text = isExact ? saySteps([{ ...step, args }]) : null;
    if (text !== null) return text;
  }
  return '';
}

/** Blanks filled with what might say so. */
function variants(args: Args, some: readonly number[], all: readonly number[]): Args[] {
  const { amount } = patternOf(some, all);
  const found: Args[] = [];
  for (const [name, value] of Object.entries(args)) {
    for (const other of inPlaceOf(value, amount)) found.push({ ...args, [name]: other });
  }
  if ('from' in args && 'to' in args) {
    const bounds = { from: some[0], to: some[some.length - 1] };
    found.push({ ...args, ...bounds });
    if ('kind' in args) found.push({ ...args, kind: 'an even number' }, { ...args, kind: 'an odd number' });
  }
  return found;
}

function inPlaceOf(value: ArgValue, amount: Amount | null): ArgValue[] {
  if (value === 'anywhere') return ['in the middle', ...(amount === null ? [] : [amount])];
  if (amount === null || typeof value !== 'object' || Array.isArray(value)) return [];
  if ('of' in value) return [amount];
  return 'cards' in value ? [{ ...value, cards: amount }] : [];
}
