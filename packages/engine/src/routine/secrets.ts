import { moveById } from '../moves/index.ts';
import { numbersIn } from './program.ts';
import type { MoveStep, Step } from './routine.ts';
import { innerSteps, knownByNature, moveSteps, type Known } from './sight.ts';

/** A step of the performer that rests on a number or a mark which the performer does not get to know. */
export interface SecretUse {
  readonly name: string;
  /** Where it was settled. */
  readonly settled: MoveStep;
  readonly used: Step;
}

/**
 * Everything the performer does with what was settled without being known: a number that was named in secret or counted unseen, a
 * card of which only the spectator knows that it was noted. What is reckoned from such numbers is as unknown as they are.
 */
export function secretUses(steps: readonly Step[], known: Known = knownByNature): SecretUse[] {
  const secrets = secretNames(moveSteps(steps), known);
  return steps.flatMap((step) => usesIn(step, secrets));
}

type Secrets = ReadonlyMap<string, MoveStep>;

function secretNames(moves: readonly MoveStep[], known: Known): Secrets {
  const secrets = new Map<string, MoveStep>();
  for (let size = -1; size < secrets.size;) {
    size = secrets.size;
    for (const step of moves) {
      const brought = moveById(step.move).brings?.(step.args) ?? {};
      const fromSecret = step.open !== true && numbersIn(step.args).some((name) => secrets.has(name));
      const names = [
        ...(!known(step) || fromSecret ? (brought.numbers ?? []) : []),
        ...(known(step) ? [] : (brought.marks ?? [])),
      ];
      for (const name of names) if (!secrets.has(name)) secrets.set(name, step);
    }
  }
  return secrets;
}

function usesIn(step: Step, secrets: Secrets): SecretUse[] {
  const uses = (names: readonly string[]): SecretUse[] =>
    names.flatMap((name) => {
      const settled = secrets.get(name);
      return settled === undefined ? [] : [{ name, settled, used: step }];
    });
  if (step.do === 'move') return step.who === 'performer' ? uses(namesUsed(step)) : [];
  const inner = innerSteps(step);
  const within = inner.flatMap((one) => usesIn(one, secrets));
  const rests = step.do === 'if' ? [step.when.number] : step.do === 'repeat' ? numbersIn(step.times) : [];
  const acts = (step.do === 'repeat' && step.who === 'performer') || inner.some(isPerformers);
  return acts ? [...uses(rests), ...within] : within;
}

/** Numbers that the sentence speaks of, and marks that have to be found on the table. */
function namesUsed(step: MoveStep): string[] {
  const marks = moveById(step.move).looks?.bits(step.args) ?? [];
  return [...new Set([...numbersIn(step.args), ...marks])];
}

function isPerformers(step: Step): boolean {
  if ('who' in step && step.who === 'performer') return true;
  return step.do !== 'move' && innerSteps(step).some(isPerformers);
}
