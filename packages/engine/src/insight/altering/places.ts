import type { Routine, Step } from '../../routine/routine.ts';

/**
 * A place of the working where something can be put in: before a step, or after the last one of a list of steps, each time round
 * where that list is repeated.
 */
export interface Place {
  /** `3`, `2.1`; for the end of a list `end`, `end of 2`, `end of 2, way 1`. */
  readonly id: string;
  /** The step it stands before; undefined at the end of a list. */
  readonly before: Step | undefined;
  /** The block whose list it is; undefined for the working itself. */
  readonly inside: Step | undefined;
}

/** The lists of steps right inside a step, each with what tells it from the others of that step. */
function listsIn(step: Step): readonly { readonly list: readonly Step[]; readonly which: string }[] {
  switch (step.do) {
    case 'move':
      return [];
    case 'repeat':
    case 'each':
      return [{ list: step.body, which: '' }];
    case 'either':
      return step.branches.map((list, i) => ({ list, which: `, way ${i + 1}` }));
    case 'if':
      return [
        { list: step.then, which: ', then' },
        { list: step.otherwise, which: ', otherwise' },
      ];
  }
}

/** The step with its lists changed, in the order of `listsIn`. */
function withLists(step: Step, lists: readonly (readonly Step[])[]): Step {
  switch (step.do) {
    case 'move':
      return step;
    case 'repeat':
    case 'each':
      return { ...step, body: lists[0] };
    case 'either':
      return { ...step, branches: lists };
    case 'if':
      return { ...step, then: lists[0], otherwise: lists[1] };
  }
}

/** All places, in the order of the note. */
export function placesOf(routine: Routine): Place[] {
  const found: Place[] = [];
  const walk = (list: readonly Step[], inside: Step | undefined, end: string): void => {
    for (const step of list) {
      found.push({ id: step.number, before: step, inside });
      for (const { list: inner, which } of listsIn(step)) walk(inner, step, `end of ${step.number}${which}`);
    }
    found.push({ id: end, before: undefined, inside });
  };
  walk(routine.steps, undefined, 'end');
  return found;
}

/** The routine with steps put in at every place that has some; `at` is asked with the number of the place in `placesOf`. */
export function putInEverywhere(routine: Routine, at: (place: number) => readonly Step[]): Routine {
  let place = 0;
  const change = (list: readonly Step[]): Step[] => {
    const made: Step[] = [];
    for (const step of list) {
      made.push(...at(place++));
      made.push(
        withLists(
          step,
          listsIn(step).map(({ list: inner }) => change(inner)),
        ),
      );
    }
    made.push(...at(place++));
    return made;
  };
  return { ...routine, steps: change(routine.steps) };
}

/** The routine with steps put in at one place. */
export function withSteps(routine: Routine, place: Place, steps: readonly Step[]): Routine {
  const number = placesOf(routine).findIndex(({ id }) => id === place.id);
  return putInEverywhere(routine, (at) => (at === number ? steps : []));
}

/** The routine with the step of that number replaced by others, or by none. */
export function replaceStep(routine: Routine, number: string, by: (step: Step) => readonly Step[]): Routine {
  const change = (list: readonly Step[]): Step[] =>
    list.flatMap((step) =>
      step.number === number
        ? by(step)
        : [
            withLists(
              step,
              listsIn(step).map(({ list: inner }) => change(inner)),
            ),
          ],
    );
  return { ...routine, steps: change(routine.steps) };
}

/** Every step, inner ones after the block they belong to. */
export function stepsOf(routine: Routine): Step[] {
  const all = (list: readonly Step[]): Step[] =>
    list.flatMap((step) => [step, ...listsIn(step).flatMap(({ list: inner }) => all(inner))]);
  return all(routine.steps);
}

/** Where a place is, in words. */
export function sayPlace({ before, inside, id }: Place): string {
  if (before !== undefined) return `before step ${before.number}`;
  if (inside === undefined) return 'at the end';
  switch (inside.do) {
    case 'repeat':
      return `at the end of each round of step ${inside.number}`;
    case 'each':
      return `at the end of step ${inside.number}, for each pile`;
    default:
      return `at the ${id}`;
  }
}
