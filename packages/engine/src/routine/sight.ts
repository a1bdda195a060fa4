import { moveById } from '../moves/index.ts';
import { isOpenByNature } from '../moves/move.ts';
import type { MoveStep, Step } from './routine.ts';

/** Whether the performer gets to know the choice made at a step. */
export type Known = (step: MoveStep) => boolean;

/** The performer's own, named, pointed to, or said to be open; never what is said to be secret. */
export const knownByNature: Known = (step) =>
  step.who === 'performer' ||
  (!step.secret && (step.open === true || isOpenByNature(moveById(step.move), step.args)));

/**
 * Whether a step is done altogether out of sight, so that nobody sees even that it is done: a move in secret, and a repetition, a
 * choice or a condition around nothing but such moves. Of any other step it is seen that it is done, though perhaps not how.
 */
export function isUnseen(step: Step, known: Known): boolean {
  const all = (steps: readonly Step[]): boolean =>
    steps.length > 0 && steps.every((one) => isUnseen(one, known));
  switch (step.do) {
    case 'move':
      return step.who === 'spectator' && step.secret && !known(step);
    case 'repeat':
      return (step.who === 'spectator' || step.times.of === 'exactly') && all(step.body);
    case 'each':
      return all(step.body);
    case 'either':
      return step.who === 'spectator' && all(step.branches.flat());
    case 'if':
      return all([...step.then, ...step.otherwise]);
  }
}

/** Every move of the working, in the order of the note. */
export function moveSteps(steps: readonly Step[]): MoveStep[] {
  return steps.flatMap((step): MoveStep[] => (step.do === 'move' ? [step] : moveSteps(innerSteps(step))));
}

/** The steps directly inside a block. */
export function innerSteps(step: Exclude<Step, MoveStep>): readonly Step[] {
  switch (step.do) {
    case 'repeat':
    case 'each':
      return step.body;
    case 'either':
      return step.branches.flat();
    case 'if':
      return [...step.then, ...step.otherwise];
  }
}
