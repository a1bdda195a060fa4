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
  return usesInList(steps, { secrets, known, told: new Set() });
}

/** What is secret somewhere, and what of it has been told by now. */
interface Knowledge {
  readonly secrets: Secrets;
  readonly known: Known;
  readonly told: ReadonlySet<string>;
}

function usesInList(steps: readonly Step[], before: Knowledge): SecretUse[] {
  const told = new Set(before.told);
  return steps.flatMap((step) => {
    const uses = usesIn(step, { ...before, told });
    // What is settled anew is as unknown as it was at first; what a block tells may not have been told, if it was left out.
    for (const name of broughtIn([step])) told.delete(name);
    if (step.do === 'move' && before.known(step))
      for (const name of moveById(step.move).tells?.(step.args) ?? []) told.add(name);
    return uses;
  });
}

function broughtIn(steps: readonly Step[]): string[] {
  return moveSteps(steps).flatMap((step) => {
    const brought = moveById(step.move).brings?.(step.args) ?? {};
    return [...(brought.numbers ?? []), ...(brought.marks ?? [])];
  });
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

function usesIn(step: Step, knowledge: Knowledge): SecretUse[] {
  const { secrets, told } = knowledge;
  const uses = (names: readonly string[]): SecretUse[] =>
    names.flatMap((name) => {
      const settled = told.has(name) ? undefined : secrets.get(name);
      return settled === undefined ? [] : [{ name, settled, used: step }];
    });
  if (step.do === 'move') return step.who === 'performer' ? uses(namesUsed(step)) : [];
  const inner = innerSteps(step);
  const again = step.do === 'repeat' || step.do === 'each' ? new Set(broughtIn(inner)) : new Set<string>();
  const still = { ...knowledge, told: new Set([...told].filter((name) => !again.has(name))) };
  const within = bodiesOf(step).flatMap((body) => usesInList(body, still));
  const rests = step.do === 'if' ? [step.when.number] : step.do === 'repeat' ? numbersIn(step.times) : [];
  const acts = (step.do === 'repeat' && step.who === 'performer') || inner.some(isPerformers);
  return acts ? [...uses(rests), ...within] : within;
}

function bodiesOf(step: Exclude<Step, MoveStep>): readonly (readonly Step[])[] {
  switch (step.do) {
    case 'repeat':
    case 'each':
      return [step.body];
    case 'either':
      return step.branches;
    case 'if':
      return [step.then, step.otherwise];
  }
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
