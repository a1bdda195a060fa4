import { moveById, MOVES } from '../../moves/index.ts';
import { isStuck, START, type Hands, type Phase } from '../../moves/move.ts';
import { effectOf, type BitKinds } from '../../pictures/effect.ts';
import { layoutKey, type Layout } from '../../pictures/layout.ts';
import { Rearrangements } from '../../routine/rearrangements.ts';
import type { MoveStep } from '../../routine/routine.ts';
import { fill, type Filling } from '../altering/fillings.ts';
import { Mix } from '../altering/mix.ts';

/** One or two sentences that could be put in, as the note would write them. */
export interface Candidate {
  readonly text: string;
  readonly steps: readonly MoveStep[];
  /** What hands do first. */
  readonly hands: Hands;
  /** The mix on the piles it was thought of for. */
  readonly mix: Mix;
}

/** What hands do, in the order in which it is offered. */
export const HANDS_IN_ORDER: readonly Hands[] = [
  'cut',
  'mix',
  'deal',
  'gather',
  'turn',
  'order',
  'hand over',
];

/**
 * Every move of the catalogue with every sensible filling of its blanks on these piles that can leave the piles as they were, alone or
 * followed by a gathering. A move that looks at cards is none: what it does depends on more than sizes.
 */
export function* candidatesFor(layout: Layout): Generator<Candidate> {
  const goal = layoutKey(layout);
  const known = new Set<string>();
  const made = new Rearrangements();
  const gatherings = new Map<string, readonly Filling[]>();
  const fillings = new Map<string, readonly Filling[]>();
  const candidate = (parts: readonly Filling[]): Candidate | null => {
    const text = parts.map(({ text: one }) => one.replace(/\.$/, '')).join('; ') + '.';
    if (known.has(text)) return null;
    known.add(text);
    const steps = parts.map(({ step }) => step);
    return { text, steps, hands: parts[0].hands, mix: new Mix(steps, layout, made) };
  };
  for (const hands of HANDS_IN_ORDER)
    for (const move of MOVES) {
      if (move.hands !== hands || move.looks !== undefined) continue;
      for (const filling of fill(move, layout)) {
        const after = plainEndOf(filling.step, layout, made.bits);
        if (after === null) continue;
        const key = layoutKey(after);
        if (key === goal) {
          const one = candidate([filling]);
          if (one !== null) yield one;
        } else if (isDealt(filling, after)) {
          let seconds = gatherings.get(key);
          if (seconds === undefined)
            gatherings.set(key, (seconds = gatheringsOf(after, goal, made.bits, fillings)));
          for (const second of seconds) {
            const two = candidate([filling, second]);
            if (two !== null) yield two;
          }
        }
      }
    }
}

/** Gatherings that bring the piles back. What they gather was dealt without a number being named, so they can be tried by themselves. */
function gatheringsOf(
  layout: Layout,
  goal: string,
  bits: BitKinds,
  fillings: Map<string, readonly Filling[]>,
): Filling[] {
  // What makes sense in a blank depends on no more.
  const key = `${layout.names.join()}/${Math.max(...layout.sizes)}`;
  let all = fillings.get(key);
  if (all === undefined) fillings.set(key, (all = GATHERINGS.flatMap((move) => fill(move, layout))));
  return all.filter(({ step }) => {
    const end = plainEndOf(step, layout, bits);
    return end !== null && layoutKey(end) === goal;
  });
}

const GATHERINGS = MOVES.filter(({ hands, looks }) => hands === 'gather' && looks === undefined);

const NO_NUMBERS = {};
const LONGEST = 600;

/** The piles after the plainest way of doing a step; null where it gets stuck. */
function plainEndOf({ move, args }: MoveStep, layout: Layout, bits: BitKinds): Layout | null {
  const { options } = moveById(move);
  let now = layout;
  let phase: Phase = START;
  for (let i = 0; i < LONGEST; i++) {
    const found = options(args, { layout: now, phase, numbers: NO_NUMBERS, seen: undefined });
    if (isStuck(found) || found.length === 0) return null;
    const [{ actions, next }] = found;
    if (actions.length > 0) now = effectOf(now, actions, bits).after;
    if (next === null) return now;
    phase = next;
  }
  return null;
}

/** Whether gathering is worth a thought: what was dealt out is all there is, or lies in one heap beside the rest. */
function isDealt({ step, hands }: Filling, after: Layout): boolean {
  if ((hands !== 'deal' && hands !== 'mix') || step.args.face !== undefined) return false;
  const { pile } = step.args;
  return after.names.length <= 2 || typeof pile !== 'string' || !after.names.includes(pile);
}

// Piles of so many kinds are remembered; a note seldom has more.
const MOST_BOOKS = 12;

/** Candidates for piles of every size that were asked about, the most lately used last. */
export class CandidateBooks {
  private readonly known = new Map<string, CandidateBook>();

  for(layout: Layout): CandidateBook {
    const { known } = this;
    const key = layoutKey(layout);
    const book = known.get(key) ?? new CandidateBook(layout);
    const [oldest] = known.keys();
    if (!known.delete(key) && known.size >= MOST_BOOKS && oldest !== undefined) known.delete(oldest);
    known.set(key, book);
    return book;
  }
}

/** The candidates for some piles, worked out as far as they have been asked for and kept for the next who asks. */
export class CandidateBook {
  private readonly found: Candidate[] = [];
  private readonly rest: Generator<Candidate>;
  private isDone = false;

  constructor(layout: Layout) {
    this.rest = candidatesFor(layout);
  }

  *all(): Generator<Candidate> {
    for (let i = 0; ; i++) {
      if (i === this.found.length && !this.isDone) {
        const next = this.rest.next();
        if (next.done === true) this.isDone = true;
        else this.found.push(next.value);
      }
      if (i >= this.found.length) return;
      yield this.found[i];
    }
  }
}
