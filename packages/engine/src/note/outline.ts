import { SEEN } from '../moves/seeing.ts';
import type { Step } from '../routine/routine.ts';
import type { Piece } from './note.ts';

/** A step of the note as a person sees it: its number, what it says, and what is said and noted beside it. */
export interface OutlineItem {
  /** `3`, `3.1`; counted through the whole working, whatever number the author typed. */
  readonly number: string;
  /** The sentence as written; null where there is none. */
  readonly sentence: Piece | null;
  /** What was understood, in the order of the sentence; a block stands here without its list. */
  readonly steps: readonly Step[];
  readonly patter: readonly string[];
  readonly remarks: readonly string[];
  readonly items: readonly OutlineItem[];
}

/** The steps with their numbers as printed: `3` where an item is one step, else `3a`, `3b`; steps inside a line go on from those. */
export function numbered(
  steps: readonly Step[],
  number: string,
  alone = steps.filter((step) => !isCondition(step)).length === 1,
): Step[] {
  let conditions = 0;
  return steps.map((step, i) => {
    // A look at the cards has the number of the block that rests on it, which comes next.
    const own = alone ? number : `${number}${letter(i - conditions)}`;
    if (isCondition(step)) conditions++;
    if (step.number !== '') return step;
    switch (step.do) {
      case 'move':
        return { ...step, number: own };
      case 'repeat':
      case 'each':
        return { ...step, number: own, body: numbered(step.body, own, false) };
      case 'either': {
        let k = 0;
        const branches = step.branches.map((branch) => {
          const named = branch.map((one) =>
            one.number !== '' ? one : numbered([one], `${own}${letter(k++)}`)[0],
          );
          return named;
        });
        return { ...step, number: own, branches };
      }
      case 'if': {
        const all = numbered([...step.then, ...step.otherwise], own, false);
        return {
          ...step,
          number: own,
          then: all.slice(0, step.then.length),
          otherwise: all.slice(step.then.length),
        };
      }
    }
  });
}

/** The look at the cards that a block `If the top card is red:` begins with. */
export function isCondition(step: Step): boolean {
  return step.do === 'move' && step.args.call === SEEN;
}

function letter(i: number): string {
  return i < 26 ? String.fromCharCode(97 + i) : `${letter(Math.floor(i / 26) - 1)}${letter(i % 26)}`;
}
