import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import { afterMishap } from '../insight/slips/after.ts';
import { saySteps } from '../insight/altering/narrow.ts';
import { placesOf, sayPlace, type Place } from '../insight/altering/places.ts';
import type { Note } from '../note/note.ts';
import { namesMissing, readSteps } from '../note/read-steps.ts';
import type { VerdictName } from '../proving/decision.ts';
import type { Limits } from '../proving/question.ts';
import type { MoveStep, Routine, Step } from '../routine/routine.ts';
import { failureData, type Describe } from './failure.ts';
import type { FailureData } from './report.ts';
import type { RemainsData } from './slips-data.ts';

/** What is still certain after a mishap. */
export interface AfterReport {
  /** `before step 3`, `at the end`. */
  readonly place: string;
  /** What happened, as it was understood. */
  readonly mishap: string;
  /** False where it may happen each time the place comes round, or not at all, since it could not be told to happen once. */
  readonly once: boolean;
  readonly sentences: readonly AfterSentence[];
  /** All endings that are certain now: sentences of the note, what says less, and what was not claimed. */
  readonly remains: readonly RemainsData[];
}

export interface AfterSentence {
  readonly text: string;
  readonly verdict: VerdictName;
  readonly failure: FailureData | null;
}

export interface AfterParts {
  readonly note: Note;
  readonly routine: Routine;
  readonly limits: Limits;
  readonly describe: Describe;
}

/** @param at `3` for a mishap before step 3, `end` for one when all is done */
export function afterReport(
  { note, routine, limits, describe }: AfterParts,
  at: string,
  sentences: string,
): Result<AfterReport, Trouble> {
  const places = placesOf(routine);
  const place = places.find(({ id }) => id === at);
  if (place === undefined)
    return bad(trouble('no-such-place', { place: at, places: places.map(({ id }) => id) }));
  const steps = readSteps(note, routine, sentences);
  if (!steps.ok) return steps;
  const names = namesMissing(steps.value, stepsBefore(routine.steps, place));
  if (names.length > 0) return bad(trouble('mishap-names', { names, place: sayPlace(place) }));
  const { placed, text } = withTexts(steps.value, note.text);
  const after = afterMishap(routine, place, placed, limits);
  if (after === null) return bad(trouble('no-such-place', { place: at, places: places.map(({ id }) => id) }));
  const { decision, isOnce, weaker, contrary, also } = after;
  const proved = decision.sentences.filter(({ verdict }) => verdict === 'proved');
  return good({
    place: sayPlace(place),
    mishap: saySteps(steps.value) ?? sentences,
    once: isOnce,
    sentences: decision.sentences.map((sentence) => ({
      text: sentence.ending.text,
      verdict: sentence.verdict,
      failure:
        sentence.failure === undefined
          ? null
          : failureData(decision, sentence, sentence.failure, text, describe),
    })),
    remains: [
      ...proved.map(({ ending }): RemainsData => ({ words: ending.text, from: 'note' })),
      ...weaker.map((one): RemainsData => ({ words: one.text, from: 'weaker' })),
      ...contrary.map((one): RemainsData => ({ words: one.text, from: 'also' })),
      ...also.map(({ words }): RemainsData => ({
        words: `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`,
        from: 'also',
      })),
    ],
  });
}

/** Steps with places of their own behind the end of the note, so that a performance can quote them. */
function withTexts(steps: readonly MoveStep[], note: string): { placed: MoveStep[]; text: string } {
  let text = note;
  const placed = steps.map((step): MoveStep => {
    const from = text.length + 1;
    text += `\n${(saySteps([step]) ?? '').replace(/\.$/, '')}`;
    return { ...step, range: { from, to: text.length } };
  });
  return { placed, text };
}

/** Steps that are done before a place is come to, or may be. */
function stepsBefore(steps: readonly Step[], place: Place): Step[] {
  const found: Step[] = [];
  const walk = (list: readonly Step[]): boolean => {
    for (const step of list) {
      if (step === place.before) return true;
      if (step.do === 'move') found.push(step);
      else if (listsOf(step).some(walk) || (place.before === undefined && step === place.inside)) return true;
    }
    return false;
  };
  walk(steps);
  return found;
}

function listsOf(step: Exclude<Step, { do: 'move' }>): readonly (readonly Step[])[] {
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
